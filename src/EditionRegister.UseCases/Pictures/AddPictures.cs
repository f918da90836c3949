using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Pictures;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Pictures;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Pictures;

/// <summary>What is said of a picture beside what it shows.</summary>
public sealed record PictureWords(string? Caption = null, string? Credit = null, RecordedDate? Taken = null)
{
    public static PictureWords None { get; } = new();
}

/// <summary>What came of files that were added: their pictures by number, files that were on record already, and files whose names match nothing.</summary>
public sealed record PicturesAdded(IReadOnlyList<long> Pictures, IReadOnlyList<string> OnRecord, IReadOnlyList<string> Unmatched);

/// <summary>
/// Takes pictures in: their bytes as they are, copied into the images folder, and a row for each. Files are read and judged before anything is written, and
/// all of them are on record or none is.
/// </summary>
public sealed class AddPictures(RegisterStore store)
{
    private readonly ImagesFolder _images = new(store.Folder);

    /// <summary>One picture of one thing; answers its number.</summary>
    /// <exception cref="Domain.RefusedException">What is named is not there, the file is no picture, or it is on record already.</exception>
    public long One(string path, PictureOf of, PictureWords? words = null)
    {
        store.Read(reader => of.Find(reader));
        var taken = PictureTaken.From(path);

        return Keep([taken], (writing, reader) =>
        {
            var (work, subject) = of.Find(reader);

            return PictureDeeds.Add(work, taken.Of(subject, words ?? PictureWords.None), 0, writing.On(Root.Work(work.Id)));
        });
    }

    /// <summary>Many at once, each of the sheet or the block whose code is in its file's name; those of one thing in the order of their names.</summary>
    /// <exception cref="Domain.RefusedException">One of the files is no picture, or no name has a code of this register.</exception>
    public PicturesAdded ByName(IReadOnlyList<string> paths, PictureWords? words = null)
    {
        var matches = store.Read(reader => paths.Distinct(StringComparer.Ordinal)
            .OrderBy(Path.GetFileName, StringComparer.Ordinal).ThenBy(path => path, StringComparer.Ordinal)
            .Select(path => (Path: path, Of: CodeInName.Find(reader, path)))
            .ToList());
        var matched = matches.Where(match => match.Of is not null).ToList();

        if (matched.Count == 0)
        {
            throw PictureRefusals.NoneMatches(matches.Count, matches.Select(match => Path.GetFileName(match.Path)).FirstOrDefault() ?? "not there");
        }

        var taken = matched.ConvertAll(match => (match.Of!.Value.Work, Picture: PictureTaken.From(match.Path), match.Of.Value.Subject));
        List<string> onRecord = [];

        var pictures = Keep(taken.ConvertAll(one => one.Picture), (writing, reader) =>
        {
            onRecord.Clear();

            return taken.GroupBy(one => one.Work).SelectMany(ofWork => AddTo(ofWork.Key, [.. ofWork.Select(one => one.Picture.Of(one.Subject, words ?? PictureWords.None))])).ToList();

            List<long> AddTo(long id, List<NewPicture> added)
            {
                var work = reader.WorkOrRefuse(id);
                var fresh = added.Where(picture => !PictureDeeds.IsOnRecord(work, picture)).DistinctBy(picture => (picture.Sha256, picture.Subject)).ToList();
                onRecord.AddRange(added.Except(fresh).Select(picture => picture.FileName));

                return [.. fresh.Select((picture, place) => PictureDeeds.Add(work, picture, place, writing.On(Root.Work(id))))];
            }
        });

        return new PicturesAdded(pictures, onRecord, [.. matches.Where(match => match.Of is null).Select(match => Path.GetFileName(match.Path))]);
    }

    /// <summary>Files first, so that no row is ever without its file; where the rows do not come to be, files that were not there before go again.</summary>
    private T Keep<T>(IReadOnlyList<PictureTaken> taken, Func<Writing, Reader, T> record)
    {
        List<string> made = [];

        try
        {
            foreach (var picture in taken)
            {
                Copy(picture, made);
            }

            return store.Write("add-pictures", writing => record(writing, writing.Read));
        }
        catch
        {
            made.ForEach(_images.TakeAway);
            throw;
        }
    }

    private void Copy(PictureTaken picture, List<string> made)
    {
        try
        {
            var bytes = File.ReadAllBytes(picture.Path);

            if (ImagesFolder.HashOf(bytes) != picture.Sha256)
            {
                throw PictureRefusals.NotKept(picture.FileName, "it was changed meanwhile");
            }

            if (_images.Keep(picture.Sha256, bytes))
            {
                made.Add(picture.Sha256);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw PictureRefusals.NotKept(picture.FileName, failure.Message);
        }
    }
}
