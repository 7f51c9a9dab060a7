using System.Text.Json;
using static TieRodCalc.Cli.Tests.ChooseJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>The figures of <c>choose --json</c>, counted by hand.</summary>
public sealed class ChooseJsonTests
{
    private const double Near = 1e-6;
    private const string AllOpen = "inner: any, sleeve: any, outer: any, nuts: {inner: any, outer: any}";
    private const string AllNamed = "inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}";

    [Fact]
    public void What_the_catalog_makes_comes_best_first_with_its_margin()
    {
        JsonElement[] found = Found(Open);

        Assert.Equal(["i", "i-short"], found.Select(item => item.Word("inner")));
        Assert.All(found, item =>
        {
            Assert.Equal(("s", "o", "buildable"), (item.Word("sleeve"), item.Word("outer"), item.Word("verdict")));
            Assert.Equal(0, item.Number("least_cut_mm"));
        });

        // Between 27.75 and 38.5 mm, in the middle at the outer end: 33.125 mm less the travel of 1.5 mm is 5.375 mm from either limit.
        Assert.Equal(5.375, found[0].Number("worst_margin_mm"), Near);
        Assert.Equal(5.375, found[1].Number("worst_margin_mm"), Near);
    }

    [Fact]
    public void The_thinnest_nut_of_the_thread_is_chosen()
    {
        Assert.All(Found(Open), item =>
            Assert.Equal(("nl", "nr"), (item.GetProperty("nuts").Word("inner"), item.GetProperty("nuts").Word("outer"))));
        string thinner = Open.With("id: nr-thin-left", "id: nl-thin").With("thickness: 9 mm", "thickness: 5 mm");
        Assert.All(Found(thinner), item => Assert.Equal("nl-thin", item.GetProperty("nuts").Word("inner")));
        string listed = Open.With("nuts: {inner: any,", "nuts: {inner: [nl-12, nr-thin-left],");
        Assert.All(Found(listed), item => Assert.Equal("nr-thin-left", item.GetProperty("nuts").Word("inner")));
        string named = Open.With("nuts: {inner: any,", "nuts: {inner: nl-12,");
        Assert.All(Found(named), item => Assert.Equal("nl-12", item.GetProperty("nuts").Word("inner")));
    }

    [Fact]
    public void Of_nuts_that_are_equally_thin_the_first_is_chosen()
    {
        string same = Open.With("thickness: 12 mm", "thickness: 8 mm");
        Assert.All(Found(same), item => Assert.Equal("nl-12", item.GetProperty("nuts").Word("inner")));
    }

    [Fact]
    public void Each_rod_is_chosen_by_itself_and_one_that_finds_nothing_decides_the_status()
    {
        string two = Open + "  - {name: right, " + AllOpen + ", length: 500 mm, adjust: 3 mm}\n";
        CommandLine run = CommandLine.RunWith(two, "choose", "-", "--json");
        using JsonDocument document = JsonDocument.Parse(run.Output);
        JsonElement[] rods = [.. document.RootElement.GetProperty("rods").EnumerateArray()];
        Assert.Equal(1, run.Status);
        Assert.Equal([("left", 2), ("right", 0)], rods.Select(rod => (rod.Word("name"), rod.GetProperty("found").GetArrayLength())));
        Assert.Equal("left", Rod(two, 0, "--rod", "left").Word("name"));
        Assert.Equal("right", Rod(two, 1, "--rod", "right").Word("name"));
    }

    [Fact]
    public void Top_keeps_the_best()
    {
        Assert.Equal(["i"], Inner(Open, "--top", "1"));
        Assert.Equal(["i", "i-short"], Inner(Open, "--top", "7"));
    }

    [Fact]
    public void Another_order_may_be_asked_for()
    {
        Assert.Equal(["i-short", "i"], Inner(Open, "--sort", "price"));
        Assert.Equal(["i-short", "i"], Inner(Open, "--sort", "mass"));
        Assert.Equal(["i", "i-short"], Inner(Open, "--sort", "margin"));
        Assert.Equal(["i", "i-short"], Inner(Open, "--sort", "cut"));
        Assert.Equal(["i-short"], Inner(Open, "--sort", "price", "--top", "1"));
    }

    [Fact]
    public void Mass_is_the_sum_of_all_five_parts()
    {
        JsonElement[] found = Found(Open);
        Assert.Equal(0.5 + 0.2 + 0.3 + 0.02 + 0.02, found[0].Number("mass_kg"), Near);
        Assert.Equal(0.45 + 0.2 + 0.3 + 0.02 + 0.02, found[1].Number("mass_kg"), Near);
        string unknown = Open.With("price: 2.25 USD, mass: 0.02 kg", "price: 2.25 USD");
        Assert.All(Found(unknown), item => Assert.Equal(JsonValueKind.Null, item.GetProperty("mass_kg").ValueKind));
    }

    [Fact]
    public void Price_is_the_sum_of_all_five_parts_in_one_currency()
    {
        JsonElement[] found = Found(Open);
        Assert.Equal((89.5m, "USD"), Price(found[0]));
        Assert.Equal((80m, "USD"), Price(found[1]));
        string unknown = Open.With("thickness: 8 mm, price: 2.25 USD", "thickness: 8 mm");
        Assert.All(Found(unknown), item => Assert.Equal(JsonValueKind.Null, item.GetProperty("price").ValueKind));
        string euros = Open.With("price: 2.25 USD", "price: 2.25 EUR");
        Assert.All(Found(euros), item => Assert.Equal(JsonValueKind.Null, item.GetProperty("price").ValueKind));
    }

    [Fact]
    public void A_cent_decides_between_prices_and_what_has_none_or_several_comes_last()
    {
        string cent = Open.With("price: 30 USD", "price: 20.52 USD").With("price: 20.50 USD", "price: 20.51 USD");
        Assert.Equal(["i-short", "i"], Inner(cent, "--sort", "price"));
        string none = Open.With("thread_length: 110 mm, price: 20.50 USD", "thread_length: 110 mm");
        Assert.Equal(["i", "i-short"], Inner(none, "--sort", "price"));
        string two = Open.With("price: 20.50 USD", "price: 0.50 EUR");
        Assert.Equal(["i", "i-short"], Inner(two, "--sort", "price"));
        string masses = Open.With("price: 30 USD, mass: 0.5 kg", "price: 30 USD");
        Assert.Equal(["i-short", "i"], Inner(masses, "--sort", "mass"));
    }

    [Fact]
    public void A_rod_that_is_not_locked_comes_last_and_is_none_to_be_content_with()
    {
        string nuts = Open.With("outer: any}, length", "outer: none}, length");
        Assert.All(Found(nuts), item => Assert.Equal("inner", item.Word("locked")));
        string bare = Open.With("nuts: {inner: any, outer: any}", "nuts: {inner: none, outer: none}");
        JsonElement[] found = [.. Rod(bare, 1).GetProperty("found").EnumerateArray()];
        Assert.Equal(["i", "i-short"], found.Select(item => item.Word("inner")));
        Assert.All(found, item =>
        {
            Assert.Equal("none", item.Word("locked"));
            Assert.Equal(JsonValueKind.Null, item.GetProperty("nuts").GetProperty("inner").ValueKind);
        });
    }

    [Fact]
    public void A_rod_that_must_be_cut_says_its_least_cut_and_its_margin_at_the_recommended_one()
    {
        // 20 mm shorter the insertions add up to 125 mm, and 77 mm of the inner and 38.5 mm of the outer end are the most: 9.5 mm are cut.
        string shorter = Open.With("length: 285 mm", "length: 265 mm").With("price: 30 USD", "max_cut: 20 mm, price: 30 USD");
        JsonElement cut = Found(shorter).Single(item => item.Word("inner") == "i");
        Assert.Equal("buildable after cutting", cut.Word("verdict"));
        JsonElement plan = CommandLine.FirstRod(shorter.With(AllOpen, AllNamed));
        Assert.Equal(plan.GetProperty("cut").GetProperty("inner").Number("least_mm"), cut.Number("least_cut_mm"), Near);
        JsonElement outer = plan.GetProperty("joints").GetProperty("outer");
        Assert.True(cut.Number("worst_margin_mm") <= outer.Number("nut_room_least_mm"));
    }

    [Fact]
    public void Every_key_is_there_whatever_came_of_it()
    {
        using JsonDocument document = JsonDocument.Parse(CommandLine.RunWith(Open, "choose", "-", "--json").Output);
        Assert.Equal(["tierodcalc", "job", "rods", "notes"], Keys(document.RootElement));
        Assert.Equal("choice", document.RootElement.Word("job"));
        JsonElement rod = document.RootElement.GetProperty("rods")[0];
        Assert.Equal(["name", "combinations", "without_clocking", "without_nut", "found"], Keys(rod));
        Assert.Equal(2, rod.Number("combinations"));
        string[] keys =
        [
            "inner", "sleeve", "outer", "nuts", "verdict", "locked", "gives_way_under_load", "worst_margin_mm", "least_cut_mm",
            "worst_case", "price", "mass_kg",
        ];
        Assert.All(rod.GetProperty("found").EnumerateArray(), item => Assert.Equal(keys, Keys(item)));
    }

    private static (decimal, string?) Price(JsonElement found) =>
        (found.GetProperty("price").GetProperty("amount").GetDecimal(), found.GetProperty("price").Word("currency"));

    private static string[] Keys(JsonElement element) => [.. element.EnumerateObject().Select(property => property.Name)];

    [Fact]
    public void Nothing_found_is_status_one_and_an_empty_list()
    {
        JsonElement rod = Rod(Open.With("length: 285 mm", "length: 500 mm"), 1);
        Assert.Equal("left", rod.Word("name"));
        Assert.Equal(JsonValueKind.Array, rod.GetProperty("found").ValueKind);
        Assert.Empty(rod.GetProperty("found").EnumerateArray());
        Rod(Open.With("inner: any, sleeve", "inner: i-inch, sleeve"), 1);
        Rod(Open.With("inner: any, sleeve", "inner: {thread: 5/8-18 LH}, sleeve"), 1);
    }

    [Fact]
    public void A_list_and_a_filter_leave_out_the_others()
    {
        Assert.Equal(["i-short"], Inner(Open.With("inner: any, sleeve", "inner: [i-short, i-inch], sleeve")));
        Assert.Equal(["i-short"], Inner(Open.With("inner: any, sleeve", "inner: i-short, sleeve")));
        Assert.Equal(["i", "i-short"], Inner(Open.With("inner: any, sleeve", "inner: {thread: M16x1.5 LH}, sleeve")));
        Assert.Equal(["i", "i-short"], Inner(Open.With("sleeve: any", "sleeve: {outer: M16x1.5}")));
        Rod(Open.With("sleeve: any", "sleeve: {outer: M16x1.5 LH}"), 1);
    }

    [Fact]
    public void A_rod_whose_parts_are_all_named_is_looked_at_alone()
    {
        string named = Open.With(AllOpen, AllNamed);
        Assert.Equal(["i"], Inner(named));
    }
}
