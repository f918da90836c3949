using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What sentences call works and editions.</summary>
public static class Called
{
    /// <summary>“Harbour”, or Untitled, or [unknown].</summary>
    public static string Work(Work work) => work.TitleState != "untitled" && work.Title is { } title ? $"“{title}”" : work.ShownTitle;

    /// <summary>Edition 3 of “Harbour”.</summary>
    public static string Edition(Work work, Edition edition) => $"Edition {Counted.Figure(edition.Id)} of {Work(work)}";

    /// <summary>1/12 to 12/12; A/P I/II to A/P II/II.</summary>
    public static string Spans(Edition edition) => string.Join("; ", edition.Numberings.Select(numbering => numbering.Span));

    /// <summary>A word of the register as a sentence has it: cut away in printing.</summary>
    public static string Plain(string word) => word.Replace('-', ' ');

    /// <summary>How far an edition is known here.</summary>
    public static string Extent(string extent) => extent switch { "whole" => "ours, wholly here", "partly-known" => "ours, partly known", "someone-elses" => "someone else's", _ => extent };
}
