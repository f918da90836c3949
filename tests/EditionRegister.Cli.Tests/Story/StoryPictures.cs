namespace EditionRegister.Cli.Tests;

/// <summary>What lies in the folder of pictures when a story begins. Codes are the same in every run, so files can be called by those the story will meet.</summary>
internal static class StoryPictures
{
    public static void Lay(string folder)
    {
        Write("front.png", PlainPng.Of(40, 30, 128));
        Write("block.png", PlainPng.Of(30, 30, 60));
        Write("holiday.png", PlainPng.Of(4, 3, 200));
        Write("rzsh-4ewr-front.png", PlainPng.Of(40, 30, 100));
        Write("scan_M2G6VWJA_back.png", PlainPng.Of(40, 30, 110));
        Write("cut.png", PlainPng.Of(40, 30, 128)[..^20]);
        Write("huge.png", PlainPng.Claiming(20_000, 20_000));
        Write("letter.jpg", "Dear Mira,"u8.ToArray());

        void Write(string name, byte[] bytes)
        {
            var path = Path.Combine(folder, "pictures", name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, bytes);
        }
    }
}
