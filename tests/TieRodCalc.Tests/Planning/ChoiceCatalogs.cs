namespace TieRodCalc.Tests.Planning;

/// <summary>A random catalog, read from its job file, with everything that it makes.</summary>
internal sealed record ChoiceCatalog(string Name, CatalogCase Catalog, ReadCatalog Read, IReadOnlyList<ReferenceChoice> All);

/// <summary>All random catalogs, tried out once for all tests.</summary>
public sealed class ChoiceCatalogs
{
    private static readonly Lazy<IReadOnlyList<ChoiceCatalog>> s_all = new(TryAll);

    internal IReadOnlyList<ChoiceCatalog> All => s_all.Value;

    private static ChoiceCatalog[] TryAll()
    {
        ChoiceCatalog[] all = new ChoiceCatalog[RandomCounts.Catalogs + RandomCounts.LargeCatalogs];
        Parallel.For(0, all.Length, index =>
        {
            int large = index - RandomCounts.Catalogs;
            CatalogCase catalog = large < 0 ? RandomCatalogs.Draw(index) : RandomCatalogs.DrawLarge(large);
            all[index] = new ChoiceCatalog(
                large < 0 ? $"catalog {index}" : $"large catalog {large}", catalog, ReadCatalog.Of(catalog), ChoiceReference.All(catalog));
        });
        return all;
    }
}
