using EditionRegister.UseCases;

namespace EditionRegister.Cli;

/// <summary>Edition 3 of “Harbour” declared: 1/12 to 12/12; A/P I/II to A/P II/II.</summary>
internal static class EditionRecorded
{
    public static Recorded As(string deed, Register register, long id)
    {
        var (work, edition) = register.LookAround.Edition(id);

        return new Recorded(EditionSaid.Spans(deed, work, edition), json => EditionJson.Write(json, edition));
    }
}
