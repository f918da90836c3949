using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Passes;

/// <summary>The words a pass is recorded with.</summary>
public static class PassKinds
{
    public static IReadOnlyList<string> All { get; } = ["printed", "blind", "chine-colle", "hand-colouring", "leaf", "letterpress", "other"];

    public static IReadOnlyList<string> Sides { get; } = ["recto", "verso", "unknown"];

    /// <summary>How several colours stand in one pass.</summary>
    public static IReadOnlyList<string> Manners { get; } = ["flat", "blend", "a-la-poupee", "unknown"];

    /// <summary>Kinds of proof that a sheet is held out as: every kind of number but the edition's own.</summary>
    public static IReadOnlyList<string> Proofs { get; } = [.. NumberingKind.All.Where(kind => !kind.InSize).Select(kind => kind.Word)];

    public static bool IsProof(Work work, string word) => work.OwnWords.Kind(word) is { InSize: false };

    /// <summary>chine collé, hand-colouring, à la poupée: a word of these lists as a sentence has it.</summary>
    public static string Plain(string word) => word switch
    {
        "chine-colle" => "chine collé",
        "hand-colouring" => "hand-colouring",
        "a-la-poupee" => "à la poupée",
        _ => word.Replace('-', ' '),
    };
}
