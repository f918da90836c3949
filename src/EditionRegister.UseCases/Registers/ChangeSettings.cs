using System.Text;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.People;
using EditionRegister.Formats.Settings;
using EditionRegister.Store;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Registers;

/// <summary>Changes what <c>register.toml</c> says. The file is written beside its place and renamed into it; comments in it stay.</summary>
public sealed class ChangeSettings
{
    private readonly RegisterStore _store;
    private readonly Action _changed;

    internal ChangeSettings(RegisterStore store, Action changed) => (_store, _changed) = (store, changed);

    /// <param name="correction">What is changed.</param>
    /// <param name="seen">The settings as the caller saw them; what was changed since to something else is then refused.</param>
    /// <exception cref="RefusedException">person-not-found, person-ambiguous, settings-changed-meanwhile, settings-not-written; or the file cannot be read.</exception>
    public RegisterSettings Run(SettingsCorrection correction, RegisterSettings? seen = null)
    {
        ArgumentNullException.ThrowIfNull(correction);
        var file = _store.Folder.Settings;

        // The file as it stands now: another program may have written it.
        var before = RegisterFile.Read(_store.Folder);
        var wanted = Wanted(before, correction);
        StillAsSeen(before, wanted, seen);
        var text = File.Exists(file) ? RegisterTomlEdit.Change(File.ReadAllText(file), wanted, file) : RegisterToml.Write(wanted);

        try
        {
            OwnerOnly.Write(file, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException("settings-not-written", $"{file} cannot be written ({failure.Message.TrimEnd('.')}). Nothing was changed. Look whether the folder and the file are yours to write.");
        }

        _changed();
        return RegisterFile.Read(_store.Folder);
    }

    private RegisterSettings Wanted(RegisterSettings before, SettingsCorrection correction) => before with
    {
        Name = correction.Name ?? before.Name,
        BaseUrl = correction.BaseUrl is { } url ? url.Length == 0 ? null : url.TrimEnd('/') : before.BaseUrl,
        Page = correction.Page ?? before.Page,
        Currency = correction.Currency?.ToUpperInvariant() ?? before.Currency,
        Units = correction.Units ?? before.Units,
        SizeWriting = correction.SizeWriting ?? before.SizeWriting,
        By = correction.Writer is { } who ? who.Length == 0 ? null : Persons.Find(_store.Read(reader => reader.Book), who) : before.By,
        PrinterOffset = new PrinterOffset(correction.PrinterRight ?? before.PrinterOffset.Right, correction.PrinterDown ?? before.PrinterOffset.Down),
    };

    private void StillAsSeen(RegisterSettings now, RegisterSettings wanted, RegisterSettings? seen)
    {
        if (seen is null)
        {
            return;
        }

        AddressBook book = _store.Read(reader => reader.Book);
        var facts = SettingsShown.Facts(seen, book).Zip(SettingsShown.Facts(now, book), SettingsShown.Facts(wanted, book));

        foreach (var (then, present, after) in facts)
        {
            if (then.Value != present.Value && after.Value != present.Value && after.Value != then.Value)
            {
                throw new RefusedException("settings-changed-meanwhile", $"Someone changed the settings while you were looking at them: {then.Label} is now “{present.Value}”, you wanted “{after.Value}”. Nothing was changed. Look at them as they stand and do this again.");
            }
        }
    }
}
