using EditionRegister.UseCases.Editions;
using EditionRegister.UseCases.Sets;

namespace EditionRegister.UseCases;

// What is done to editions and to sets of prints.
public sealed partial class Register
{
    public MakeSet MakeSet => new(Store);

    public ChangeSetParts ChangeSetParts => new(Store);

    public GatherSet GatherSet => new(Store);

    public EditSet EditSet => new(Store);

    public TakeOutOfSet TakeOutOfSet => new(Store);

    public RehearseDeclaration RehearseDeclaration => new(Store);

    public DeclareEdition DeclareEdition => new(Store);

    public MendSize MendSize => new(Store);

    public EndShort EndShort => new(Store);

    public DivideEdition DivideEdition => new(Store);

    public GiveNumbers GiveNumbers => new(Store);

    public StateNumberFate StateNumberFate => new(Store);

    public MakeEditionWhole MakeEditionWhole => new(Store);

    public CloseEdition CloseEdition => new(Store);
}
