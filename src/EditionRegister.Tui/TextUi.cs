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
        app.Init();
        ThisTerminal.Prepare(app);
        StoreQueue? store = null;
        using var signals = ThisTerminal.LeaveOnSignals(app, () => store?.DisposeAsync().AsTask() ?? Task.CompletedTask);

        for (var next = new Leave(folder); next is not null;)
        {
            next = next.Open is { } register ? Register(app, register, services, opened => store = opened) : Welcome(app, services);
        }
    }

    private static Leave? Welcome(IApplication app, TextUiServices services)
    {
        Desk desk = new(null, services.Surroundings.Time);
        House house = new(desk, [new Room(RoomName.Welcome, () => new WelcomePage(desk, services))], failure => services.OwnUp(failure, null));

        return Live(app, house, "Edition register", services.CurrentDirectory, services);
    }

    private static Leave? Register(IApplication app, string folder, TextUiServices services, Action<StoreQueue> opened)
    {
        Desk? desk = null;
        var surroundings = services.Surroundings with { Say = sentence => app.Invoke(() => desk?.Progress(sentence)) };
        var register = UseCases.Register.Open(new RegisterFolder(folder), surroundings, services.By);
        StoreQueue store = new(register, app.Invoke);
        opened(store);

        try
        {
            desk = new Desk(store, services.Surroundings.Time);
            House house = new(desk, Rooms.Of(desk), failure => services.OwnUp(failure, folder));

            return Live(app, house, register.Settings.Name, folder, services);
        }
        finally
        {
            store.DisposeAsync().AsTask().GetAwaiter().GetResult();
        }
    }

    private static Leave? Live(IApplication app, House house, string name, string folder, TextUiServices services)
    {
        using MainWindow window = new(house, name, folder, ThisTerminal.Pen(services.Environment));
        _ = house.StartAsync();
        app.Run(window);

        // Ended by a signal, there is nothing to open next.
        return house.Left is { Open: not null } next ? next : null;
    }
}
