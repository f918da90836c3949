/// <summary>
/// Rides along in a program under test: the runtime calls it before Main where DOTNET_STARTUP_HOOKS names this assembly.
/// It writes down what the program had loaded when it ended. The name, and that it has no namespace, are the runtime's terms.
/// </summary>
#pragma warning disable CA1050, CA1052 // both are the runtime's terms
public class StartupHook
{
    public const string File = "EDREG_TEST_LOADED";

    public static void Initialize()
    {
        var file = Environment.GetEnvironmentVariable(File)!;

        AppDomain.CurrentDomain.ProcessExit += (_, _) =>
            System.IO.File.WriteAllLines(file, AppDomain.CurrentDomain.GetAssemblies().Select(assembly => assembly.GetName().Name ?? ""));
    }
}
