namespace EditionRegister.UseCases.Tests;

/// <summary>How far random work goes: sampled by default, further with EDREG_TEST_DEPTH=ci, far with =long.</summary>
internal static class Depth
{
    public static int Of(int usual, int ci, int @long) => Environment.GetEnvironmentVariable("EDREG_TEST_DEPTH") switch
    {
        "long" => @long,
        "ci" => ci,
        _ => usual,
    };
}
