Console.WriteLine("One line.");
