using EditionRegister.Domain;
using EditionRegister.UseCases.Pictures;
using static EditionRegister.UseCases.Tests.SmallEdition;

namespace EditionRegister.UseCases.Tests.Pictures;

public sealed class AddPicturesTests : IDisposable
{
    private readonly TempRegister _register = new();

    public AddPicturesTests() => Make(_register.Register);

    private Register Register => _register.Register;

    public void Dispose() => _register.Dispose();

    [Fact]
    public void The_original_is_kept_byte_for_byte_under_its_hash_for_its_owner_alone()
    {
        var bytes = PlainPng.Of(40, 30, 128);

        var id = Register.AddPictures.One(Png("front.png"), new PictureOf(Register.Sheet(1).ShownCode), new PictureWords("the front", "Joost", Domain.Dates.RecordedDate.Read("2026-02")));

        var one = Assert.Single(Register.ListPictures.Run());
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes));
        Assert.Equal((id, hash, "image/png", bytes.LongLength, 40, 30, "front.png", "the front", "Joost", "2026-02", "shown"), Facts(one));
        Assert.Equal(_register.In("register", "images", hash[..2], hash), one.Path);
        Assert.Equal(bytes, File.ReadAllBytes(one.Path));
        Assert.True(one.IsThere);
        Assert.Empty(Register.CheckRegister.Run(hashPictures: true));

        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(one.Path));
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Path.GetDirectoryName(one.Path)!));
        }
    }

    [Fact]
    public void Files_find_their_sheets_by_a_code_anywhere_in_their_names()
    {
        var (first, second) = (Register.Sheet(1).ShownCode, Register.Sheet(2).ShownCode);
        string[] names = [$"{first}.png", $"IMG_{first.Replace("-", "", StringComparison.Ordinal)}_b.png", $"a {second.ToLowerInvariant()} back.png", "holiday.png", $"{first} and {second}.png"];

        var added = Register.AddPictures.ByName([.. names.Select((name, at) => Png(name, (byte)at)).Reverse()]);

        Assert.Equal(new[] { "holiday.png", $"{first} and {second}.png" }.Order(StringComparer.Ordinal), added.Unmatched.Order(StringComparer.Ordinal));
        Assert.Equal(
            [(1, names[1]), (1, names[0]), (2, names[2])],
            Register.ListPictures.Run().OrderBy(one => Number(one)).ThenBy(one => one.Picture.Ordinal).Select(one => (Number(one), one.Picture.FileName!)));
        Assert.Equal([1, 2, 3], Register.ListPictures.Run().Select(one => one.Picture.Ordinal));
        Assert.Equal(3, Directory.GetFiles(_register.In("register", "images"), "*", SearchOption.AllDirectories).Length);
    }

    [Fact]
    public void Several_works_at_once_are_one_batch()
    {
        Register.RecordWork.Run(new Domain.Works.NewWork { Title = "Dyke" }, ["Mira Tolland"]);
        Register.RecordPrintRun.Run(2, new Domain.Works.NewPrintRun { Started = 1 }, "Drawer 1");
        var other = Register.LookAround.Work(2).Impressions[0].ShownCode;

        Register.AddPictures.ByName([Png($"{Register.Sheet(1).ShownCode}.png", 1), Png($"{other}.png", 2)]);

        var entries = Register.LookAround.Logbook(10).Where(entry => entry.Deed == "add-pictures").ToList();
        Assert.Equal(["work/2", "work/1", "batch/2"], entries.Select(entry => entry.Root));
        Assert.Single(entries.Select(entry => entry.Batch).Distinct());
    }

    [Fact]
    public void One_bad_file_among_many_leaves_nothing_behind()
    {
        var good = Png($"{Register.Sheet(1).ShownCode}.png");
        var bad = _register.File($"{Register.Sheet(2).ShownCode}.png", "hello");

        Assert.Equal("picture-not-read", Assert.Throws<RefusedException>(() => Register.AddPictures.ByName([good, bad])).Name);

        Assert.Empty(Register.ListPictures.Run());
        Assert.False(Directory.Exists(_register.In("register", "images")));
    }

    [Fact]
    public void A_file_that_was_copied_goes_again_where_its_row_does_not_come_to_be()
    {
        using Microsoft.Data.Sqlite.SqliteConnection other = new($"Data Source={Register.Folder.Database};Pooling=False");
        other.Open();
        using var busy = other.CreateCommand();
        busy.CommandText = "BEGIN IMMEDIATE";
        busy.ExecuteNonQuery();

        Assert.Equal("register-busy", Assert.Throws<RefusedException>(() => Register.AddPictures.One(Png("front.png"), new PictureOf(Edition: 1))).Name);

        Assert.Empty(Directory.GetFiles(_register.In("register", "images"), "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void Added_again_by_name_a_file_is_said_to_be_on_record_and_taken_off_it_is_shown_again()
    {
        var path = Png($"{Register.Sheet(1).ShownCode}.png");
        var first = Register.AddPictures.ByName([path]).Pictures[0];

        var again = Register.AddPictures.ByName([path]);
        Register.TakePictureOff.Run(first);
        var shown = Register.AddPictures.ByName([path]);

        Assert.Empty(again.Pictures);
        Assert.Equal([Path.GetFileName(path)], again.OnRecord);
        Assert.Equal([first], shown.Pictures);
        Assert.True(Assert.Single(Register.ListPictures.Run()).Picture.IsShown);
    }

    [Fact]
    public void A_sheets_picture_may_stand_for_its_edition_too()
    {
        var code = Register.Sheet(1).ShownCode;
        var id = Register.AddPictures.One(Png("front.png"), new PictureOf(code));

        var same = Register.AddPictures.One(Png("front.png"), new PictureOf(code, Edition));

        Assert.Equal(id, same);
        Assert.Equal([id], Register.ListPictures.Run(new PictureOf(Edition: Edition)).Select(one => one.Picture.Id));
    }

    [Fact]
    public void A_picture_of_the_block_is_found_by_it()
    {
        var id = Register.AddPictures.One(Png("block.png"), new PictureOf(Matrix: 1));

        Assert.Equal([id], Register.ListPictures.Run(new PictureOf(Matrix: 1)).Select(one => one.Picture.Id));
        Assert.Empty(Register.ListPictures.Run(new PictureOf(Register.Sheet(1).ShownCode)));
    }

    [Fact]
    public void Folders_links_and_devices_are_refused()
    {
        File.CreateSymbolicLink(_register.In("link.png"), Png("front.png"));
        string[] paths = [_register.In("link.png"), _register.In("register"), .. OperatingSystem.IsWindows() ? [] : (string[])["/dev/null", "/dev/zero"]];

        Assert.All(paths, path => Assert.Equal("picture-not-a-file", Assert.Throws<RefusedException>(() => Register.AddPictures.One(path, new PictureOf(Edition: 1))).Name));
    }

    [Fact]
    public void Copies_for_others_are_called_by_code_and_those_taken_off_are_left_out()
    {
        var code = Register.Sheet(1).ShownCode;
        Register.AddPictures.One(Png("Elsie Marrowby.png"), new PictureOf(code));
        var off = Register.AddPictures.One(Png("other.png", 7), new PictureOf(code));
        Register.TakePictureOff.Run(off);

        var files = Register.WritePublicPictures.Run(folder: _register.In("site"), longestSide: 20);

        Assert.Equal([_register.In("site", $"{code}-picture-1.jpg")], files);
        Assert.Equal([0xFF, 0xD8], File.ReadAllBytes(files[0])[..2]);
    }

    [Fact]
    public void A_check_misses_a_file_and_finds_other_bytes_of_the_same_length_only_where_it_reads_them()
    {
        Register.AddPictures.One(Png("front.png"), new PictureOf(Edition: 1));
        var path = Register.ListPictures.Run()[0].Path;
        var bytes = File.ReadAllBytes(path);
        bytes[^1] ^= 1;
        File.WriteAllBytes(path, bytes);

        Assert.Empty(Register.CheckRegister.Run());
        Assert.Equal("PicturesAreOnFile", Assert.Single(Register.CheckRegister.Run(hashPictures: true)).Rule);
        File.WriteAllBytes(path, [.. bytes, 0]);
        Assert.Equal("PicturesAreOnFile", Assert.Single(Register.CheckRegister.Run()).Rule);
        File.Delete(path);
        Assert.EndsWith(" is missing.", Assert.Single(Register.CheckRegister.Run()).Message, StringComparison.Ordinal);
    }

    private static int Number(PictureListed one) => one.Work.Impressions.First(sheet => sheet.Id == one.Picture.Impression).Number!.Value;

    private static (long, string, string, long, int, int, string?, string?, string?, string?, string) Facts(PictureListed one) => (
        one.Picture.Id, one.Picture.Sha256, one.Picture.Media, one.Picture.Bytes, one.Picture.Width, one.Picture.Height, one.Picture.FileName, one.Picture.Caption,
        one.Picture.Credit, one.Picture.Taken.Text, one.Picture.Standing);

    private string Png(string name, byte shade = 128)
    {
        File.WriteAllBytes(_register.In(name), PlainPng.Of(40, 30, shade));

        return _register.In(name);
    }
}
