namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>How a technique carries ink to paper, which is how printmakers sort their techniques.</summary>
/// <param name="Word">Permanent, in kebab case.</param>
/// <param name="Name">As screens show it.</param>
public sealed record TechniqueFamily(string Word, string Name)
{
    public static TechniqueFamily Relief { get; } = new("relief", "relief");
    public static TechniqueFamily Intaglio { get; } = new("intaglio", "intaglio");
    public static TechniqueFamily Planographic { get; } = new("planographic", "planographic");
    public static TechniqueFamily Stencil { get; } = new("stencil", "stencil");
    public static TechniqueFamily Mono { get; } = new("mono", "single impressions");
    public static TechniqueFamily Digital { get; } = new("digital", "digital");

    /// <summary>What is done beside the printing, to a sheet that some other technique prints.</summary>
    public static TechniqueFamily Beside { get; } = new("beside", "beside the printing");

    public static TechniqueFamily Other { get; } = new("other", "other");

    public static IReadOnlyList<TechniqueFamily> All { get; } = [Relief, Intaglio, Planographic, Stencil, Mono, Digital, Beside, Other];
}
