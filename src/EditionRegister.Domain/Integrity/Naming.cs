using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What findings call the things of a work, so that a person can walk to the drawer.</summary>
internal static class Naming
{
    extension(Work work)
    {
        /// <summary>“Harbour”, or Untitled, or [unknown].</summary>
        public string Called => work.TitleState != "untitled" && work.Title is { } title ? $"“{title}”" : work.ShownTitle;

        /// <summary>A work has one edition as a rule; only where there are more is it said which.</summary>
        public string CalledEdition(Edition? edition) =>
            edition is null || work.Editions.Count < 2 ? work.Called : $"{work.Called}, edition {InWords.Figure(edition.Ordinal)}";

        /// <summary>The number given, spelled; else as pencilled; null where there is none.</summary>
        public string? NumberShown(Impression sheet) =>
            sheet.Number is { } number && work.NumberingOf(sheet) is { } numbering ? numbering.Spelled(number)
            : string.IsNullOrWhiteSpace(sheet.Pencilled) ? null
            : sheet.Pencilled.Trim();

        /// <summary>3/12 of “Harbour” (7KQ4-M2X3). Begins a sentence.</summary>
        public string CalledSheet(Impression sheet) => work.NumberShown(sheet) is { } number
            ? $"{number} of {work.CalledEdition(work.EditionOf(sheet))} ({sheet.ShownCode})"
            : $"Sheet {sheet.ShownCode} of {work.Called}";

        public string CalledRun(PrintRun run) => $"print run {InWords.Figure(run.Ordinal)} of {work.Called}";

        public string CalledPass(PrintRun run, Pass pass) => $"pass {InWords.Figure(pass.Ordinal)} of {work.CalledRun(run)}";

        /// <summary>The number as the pencil says it: 3/12; where it took words, those words.</summary>
        public string Pencil(Impression sheet, PencilledNumber says) =>
            PencilledNumber.TryParse(sheet.Pencilled, says.Notation, work.OwnWords, out _, out _) ? says.ToString() : $"“{sheet.Pencilled?.Trim()}”";

        public Subject AsSubject() => new("work", work.Id, work.Called);

        public Subject SubjectOf(Edition edition) => new("edition", edition.Id, work.CalledEdition(edition));

        public Subject SubjectOf(Edition edition, Numbering numbering) =>
            new("numbering", numbering.Id, $"{work.CalledEdition(edition)}, {numbering.Kind?.Name ?? (numbering.KindWord.Length == 0 ? "a numbering of no kind" : numbering.KindWord)}{(numbering.Name is null ? "" : $" ({numbering.Name})")}");

        public Subject SubjectOf(PrintRun run) => new("print-run", run.Id, $"{work.Called}, print run {InWords.Figure(run.Ordinal)}");

        public Subject SubjectOf(Matrix matrix) => new("matrix", matrix.Id, $"{work.Called}, {matrix.Called}");

        public Subject SubjectOf(Impression sheet) => new(
            "impression",
            sheet.Id,
            work.NumberShown(sheet) is { } number ? $"{work.CalledEdition(work.EditionOf(sheet))} {number} ({sheet.ShownCode})" : $"{work.Called} ({sheet.ShownCode})");

        public IEnumerable<NumberingPlace> Numberings =>
            from edition in work.Editions from numbering in edition.Numberings select new NumberingPlace(edition, numbering);

        /// <summary>The sheets that have a number of this numbering, by that number.</summary>
        public ILookup<int, Impression> Given(Numbering numbering) =>
            work.Impressions.Where(sheet => sheet.Numbering == numbering.Id && sheet.Number is not null).ToLookup(sheet => sheet.Number!.Value);
    }

    extension(Impression sheet)
    {
        public bool IsDestroyed => sheet.Whereabouts is [.., { Kind: "destroyed", To.State: "gone" }];
    }
}
