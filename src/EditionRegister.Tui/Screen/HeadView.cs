using EditionRegister.Domain.Text;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Input;

namespace EditionRegister.Tui.Screen;

/// <summary>The top of the screen: which register, which room, which page.</summary>
internal sealed class HeadView(House house, string register, string folder, Pen pen) : Canvas(pen)
{
    public const int Rows = 3;

    protected override IReadOnlyList<Line> Picture(int width, int height) => [Register(width), Rooms(), Titles(width)];

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!IsClick(mouse) || mouse.Position is not { Y: 1 } at)
        {
            return false;
        }

        var column = 0;

        foreach (var room in house.Rooms)
        {
            column += Named(room).Length + 1;

            if (at.X < column)
            {
                _ = house.GoAsync(room.Name);
                return true;
            }
        }

        return false;
    }

    private Line Register(int width)
    {
        var name = TextWidth.Cut(SafeText.Show(register), width / 2);
        var left = width - TextWidth.Of(name) - 3;
        // The end of a path says more than its beginning.
        var where = folder.Length > left ? "…" + folder[^Math.Max(0, left - 1)..] : folder;

        return Line.Of(name, Tone.Strong).Then(new string(' ', Math.Max(1, width - TextWidth.Of(name) - TextWidth.Of(where)))).Then(where, Tone.Quiet);
    }

    private Line Rooms() => house.Rooms.Count == 1
        ? Line.Empty
        : new Line([.. house.Rooms.SelectMany(room => new[] { new Bit(Named(room), room == house.Here ? Tone.Here : Tone.Plain), new Bit(" ") })]);

    private string Named(Room room) => room == house.Here ? $"[{(int)room.Name} {room.Name.Shown()}]" : $"{(int)room.Name} {room.Name.Shown()}";

    private Line Titles(int width)
    {
        var titles = TextWidth.Cut(SafeText.Show(string.Join(" › ", house.Here.Titles)), width - 6);

        return Line.Of("── ", Tone.Quiet).Then(titles, Tone.Strong).Then(" " + new string('─', Math.Max(0, width - 4 - TextWidth.Of(titles))), Tone.Quiet);
    }
}
