using EditionRegister.Store;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Screen;
using EditionRegister.Tui.Welcome;
using EditionRegister.UseCases;
using Terminal.Gui.App;

namespace EditionRegister.Tui;

/// <summary>What the text-mode UI takes from the machine it runs on, and what a test gives it instead.</summary>
/// <param name="Surroundings">Time and randomness; what it is told to say goes to the screen's message line.</param>
/// <param name="Environment">An environment variable's value, or null.</param>
/// <param name="CurrentDirectory">Where paths a person types begin.</param>
/// <param name="By">The person named by --by, or null.</param>
/// <param name="OwnUp">Writes the trace of a mistake of our own, by the register's folder or none, and answers what to say of it.</param>
public sealed record TextUiServices(
    Surroundings Surroundings, Func<string, string?> Environment, string CurrentDirectory, long? By, Func<Exception, string?, string> OwnUp);

/// <summary>The text-mode UI: one register after another, until the user leaves.</summary>
public static class TextUi
{
    /// <param name="folder">The register's folder; null opens the welcome, from where one is made or opened.</param>
    /// <param name="services">The machine.</param>
    /// <exception cref="Domain.RefusedException">The register cannot be opened.</exception>
    public static void Run(string? folder, TextUiServices services)
    {
        if (folder is not null)
        {
            // One that cannot be opened is told of in words, before a screen hides them.
            _ = UseCases.Register.Open(new RegisterFolder(folder), services.Surroundings, services.By).LookAround.Head();
        }

        using var app = Application.Create();
        OnScreen onScreen = new(app.Invoke);
        var opened = Open(folder, services, onScreen);
        using var signals = ThisTerminal.LeaveOnSignals(app, () => opened.FinishAsync());

        ThisTerminal.Begin(app);
        onScreen.Begin();

        while (Live(app, opened, services) is { } next)
        {
            opened = Open(next, services, onScreen);
        }
    }

    /// <summary>The house on a register, already reading; or the welcome where there is none.</summary>
    private static OpenHouse Open(string? folder, TextUiServices services, OnScreen onScreen)
    {
        var opened = folder is null ? Welcome(services) : Register(folder, services, onScreen);
        _ = opened.House.StartAsync();

        return opened;
    }

    private static OpenHouse Welcome(TextUiServices services)
    {
        Desk desk = new(null, services.Surroundings.Time);
        House house = new(desk, [new Room(RoomName.Welcome, () => new WelcomePage(desk, services))], failure => services.OwnUp(failure, null));

        return new OpenHouse(house, null, "Edition register", services.CurrentDirectory);
    }

    private static OpenHouse Register(string folder, TextUiServices services, OnScreen onScreen)
    {
        Desk? desk = null;
        var surroundings = services.Surroundings with { Say = sentence => onScreen.Run(() => desk?.Progress(sentence)) };
        var register = UseCases.Register.Open(new RegisterFolder(folder), surroundings, services.By);
        StoreQueue store = new(register, onScreen.Run);
        desk = new Desk(store, services.Surroundings.Time);

        return new OpenHouse(new House(desk, Rooms.Of(desk), failure => services.OwnUp(failure, folder)), store, register.Settings.Name, folder);
    }

    /// <summary>Shows a house until it is left; answers the register to open next, or null to end.</summary>
    private static string? Live(IApplication app, OpenHouse opened, TextUiServices services)
    {
        try
        {
            using MainWindow window = new(opened.House, opened.Name, opened.Folder, ThisTerminal.Pen(services.Environment));
            app.Run(window);

            // Ended by a signal, there is nothing to open next.
            return opened.House.Left?.Open;
        }
        finally
        {
            opened.FinishAsync().GetAwaiter().GetResult();
        }
    }

    /// <summary>A house with what stands over its door.</summary>
    private sealed record OpenHouse(House House, StoreQueue? Store, string Name, string Folder)
    {
        /// <summary>Finishes what is under way in the register, and takes nothing more on.</summary>
        public Task FinishAsync() => Store?.DisposeAsync().AsTask() ?? Task.CompletedTask;
    }
}
