using TieRodCalc.Cli;

return Application.Run(
    args, new Terminal(Console.OpenStandardInput(), Console.OpenStandardOutput(), Console.OpenStandardError()));
