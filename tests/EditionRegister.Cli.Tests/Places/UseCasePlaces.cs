namespace EditionRegister.Cli.Tests.Places;

/// <summary>
/// Where everything the register can do is found: its command, and the room with the file of the room that does it. A gap has its reason.
/// A new use case arrives with its line here.
/// </summary>
internal static class UseCasePlaces
{
    private const string ForTheRoom = "the room's own looking: the commands print the same facts through LookAround and their own deeds";
    private const string ForThePreview = "the text-mode UI looks at a paper before it is written; a command writes at once and can be run again";

    public static IReadOnlyList<UseCasePlace> All { get; } =
    [
        new("RecordWork", "work add", "Bench", "Bench/WorkForms"),
        new("EditWork", "work edit", "Bench", "Bench/WorkForms"),
        new("JoinWork", "work join", "Bench", "Bench/WorkForms"),
        new("ListBench", null, "Bench", "Bench/BenchPage") { WhyNoCommand = ForTheRoom },
        new("RecordMatrix", "matrix add", "Bench", "Bench/MatrixForms"),
        new("EditMatrix", "matrix edit", "Bench", "Bench/MatrixEditForm"),
        new("ReachMatrixState", "matrix state", "Bench", "Bench/MatrixForms"),
        new("StateMatrixFate", "matrix fate", "Bench", "Bench/MatrixForms"),
        new("RecordPrintRun", "run add", "Bench", "Bench/RunForms"),
        new("EditPrintRun", "run edit", "Bench", "Bench/RunForms.Edit"),
        new("LayPile", "run pile", "Bench", "Bench/PileForm"),
        new("RecordPass", "pass add", "Bench", "Bench/PassForm") { Also = ["pass again"] },
        new("EditPass", "pass edit", "Bench", "Bench/PassForm"),
        new("TakePassBack", "pass take-back", "Bench", "Bench/RunPage"),
        new("ListRack", "rack", "Bench", "Bench/RackPage"),
        new("PlanSheets", "plan", "Bench", "Bench/PlanForm"),
        new("SortPulls", "sort", "Bench", "Bench/SortingPage"),
        new("GradeSheets", "grade", "Bench", "Bench/GradingPage"),
        new("ProposeKept", "propose", "Bench", "Bench/ProposalPage"),
        new("WorkOver", "work-over", "Plan chest", "Sheets/WorkOverForm"),
        new("SignSheets", "sign done", null, null) { WhyNoRoom = "the signing page of the bench goes through the same order with the same lines and inscribes sheet by sheet, since each can also be left, skipped or miswritten" },
        new("AlterSheet", "alter", "Plan chest", "Sheets/AlterForm"),
        new("MakeSet", "set make", "Bench", "Sets/SetForms"),
        new("ChangeSetParts", "set part", "Bench", "Sets/SetForms"),
        new("GatherSet", "set gather", "Plan chest", "Sets/SetPage"),
        new("EditSet", "set edit", "Bench", "Sets/SetForms"),
        new("TakeOutOfSet", "set take-out", "Plan chest", "Sets/SetPage"),
        new("RehearseDeclaration", null, "Bench", "Bench/RehearsalPage") { WhyNoCommand = "a rehearsal is a page to read before one key; `edreg pencil` and `edreg map` show the same after the deed, which can be mended until the first signing" },
        new("DeclareEdition", "declare", "Bench", "Bench/RehearsalPage"),
        new("GiveNumbers", "number", "Bench", "Bench/NumbersForm"),
        new("InscribeImpressions", "inscribe", "Bench", "Bench/SigningPage"),
        new("PutInscriptionBack", null, "Bench", "Bench/SigningPage") { WhyNoCommand = "one key back in a signing session; a command inscribes anew with what is right" },
        new("MendSize", "mend", "Plan chest", "PlanChest/MendSizeForm"),
        new("StateNumberFate", "fate", "Plan chest", "PlanChest/NumberFateForm"),
        new("MakeEditionWhole", "whole", "Plan chest", "PlanChest/MakeWhole"),
        new("CloseEdition", "close", "Plan chest", "PlanChest/ClosingEdition"),
        new("EndShort", "short", "Plan chest", "PlanChest/EndingShort"),
        new("DivideEdition", "divide", "Plan chest", "PlanChest/DivideForm"),
        new("AddKind", "kind add", "Plan chest", "PlanChest/OwnWordForms"),
        new("EditKind", "kind edit", "Plan chest", "PlanChest/OwnWordForms"),
        new("AddFault", "fault add", "Plan chest", "PlanChest/OwnWordForms"),
        new("AddTechnique", "technique add", "Plan chest", "PlanChest/OwnWordForms"),
        new("ReadTextsAgain", "read-again", null, null) { WhyNoRoom = "done once, after a register of an older form was upgraded; what is typed in a room is read there" },
        new("VarySheets", "vary", "Plan chest", "Sheets/VaryForm"),
        new("LinkGhost", "ghost", "Plan chest", "Sheets/GhostForm"),
        new("DedicateSheets", "dedicate", "Plan chest", "Sheets/DedicateForm"),
        new("ReplaceSheet", "replace", "Plan chest", "Sheets/ReplaceForm"),
        new("PlanChest", null, "Plan chest", "PlanChest/PlanChestPage") { WhyNoCommand = "an index for filtering at every key; a command asks once, through ListImpressions" },
        new("ListImpressions", "list", null, null) { WhyNoRoom = "the plan chest, its trays and the documents room list the same impressions from the chest in memory" },
        new("PriceImpressions", "price", "Plan chest", "Sheets/PriceForm"),
        new("PutAway", "put-away", "Plan chest", "Sheets/PutAwayForm"),
        new("Consign", "consign", "Plan chest", "Sheets/ConsignForm"),
        new("ReturnImpressions", "return", "Plan chest", "Sheets/ReturnForm"),
        new("SellImpressions", "sell", "Plan chest", "Sheets/SellForm"),
        new("SendAway", "lend", "Plan chest", "Sheets/SendForm") { Also = ["away", "exhibit", "pass-on", "await"] },
        new("HandOver", "hand-over", "Plan chest", "Sheets/HandOverForm"),
        new("RecordMishap", "mishap", "Plan chest", "Sheets/MishapForm"),
        new("FindAgain", "find", "Plan chest", "Sheets/FindForm"),
        new("PassSheets", "give", "Plan chest", "Sheets/PassForm") { Also = ["exchange", "bequeath"] },
        new("TakeBackFromBuyer", "take-back-from-buyer", "Plan chest", "Sheets/BuyersReturnForm"),
        new("ReserveSheets", "reserve", "Plan chest", "Sheets/ReserveForm"),
        new("LiftReservation", "lift", "Plan chest", "Sheets/ReserveForm"),
        new("AmendChain", "amend", "Plan chest", "PlanChest/AmendMoveForm"),
        new("ListDue", "due", "Plan chest", "PlanChest/DuePage"),
        new("KnownNumbers", "known", "Bench", "Bench/KnownForm"),
        new("HoldSheet", "hold", "Plan chest", "PlanChest/HoldForm"),
        new("TakeLinkBack", "take-back", "Plan chest", "Sheets/LastStep"),
        new("ReadIn", "read", "Plan chest", "ReadingIn/ReadInPage"),
        new("UndoBatch", "undo", "Logbook", "Logbook/BatchUndoing"),
        new("LookAround", "log", "Logbook", "Logbook/EntryBlock"),
        new("CheckRegister", "check", "Findings", "Findings/Checking"),
        new("AcceptFinding", "accept", "Findings", "Findings/Accepting"),
        new("TakeAcceptanceBack", "accept", "Findings", "Findings/Accepting"),
        new("IssueCertificates", "certificate issue", "Documents", "Documents/CertificatePaper"),
        new("WriteCertificates", "certificate print", "Documents", "Documents/CertificateFiles"),
        new("PreviewCertificates", null, "Documents", "Documents/CertificatePaper") { WhyNoCommand = ForThePreview },
        new("PreviewStandingCertificates", null, "Documents", "Documents/CertificateAgainPaper") { WhyNoCommand = ForThePreview },
        new("WriteLabels", "labels", "Documents", "Documents/LabelPaper"),
        new("PlanLabels", null, "Documents", "Documents/LabelPaper") { WhyNoCommand = ForThePreview },
        new("ListLabelSheets", null, "Documents", "Documents/DocumentsSeen") { WhyNoCommand = "the labels command names every label sheet where one is not known" },
        new("SpellPencil", "pencil", "Documents", "Documents/PencilPaper"),
        new("ListSchedule", "schedule", null, null) { WhyNoRoom = "a list for an insurer, printed or written as CSV once in a year; the plan chest shows the same sheets with their prices" },
        new("LookBack", "map", "Plan chest", "PlanChest/AsOfPage"),
        new("AddPictures", "picture add", "Plan chest", "Pictures/PictureForms"),
        new("ListPictures", "picture list", "Plan chest", "Pictures/PicturesPage"),
        new("TakePictureOff", "picture take-off", "Plan chest", "Pictures/PictureForms"),
        new("WritePublicPictures", "picture publish", "Plan chest", "Pictures/PictureForms"),
        new("ExportInventory", "inventory", "Documents", "Documents/InventoryPaper"),
        new("PreviewInventory", null, "Documents", "Documents/InventoryPaper") { WhyNoCommand = ForThePreview },
        new("TakeStock", "stock take", "Address book", "Stock/StockCountPage"),
        new("SettleStock", "stock settle", "Address book", "Stock/StockTakePage"),
        new("DeliverSheets", "stock deliver", "Plan chest", "Stock/DeliveryPage"),
        new("ReceiveSheets", "stock return", "Address book", "Stock/ReceivingPage"),
        new("ReportCondition", "condition add", "Plan chest", "Conditions/ExamineForm"),
        new("RecordConditionTerm", "condition term add", "Plan chest", "Conditions/TermsPage"),
        new("WriteConditionSheet", "condition print", "Plan chest", "Conditions/ConditionPage"),
        new("WritePlaceList", "place show", "Address book", "AddressBook/PlaceListPage"),
        new("MakeShow", "shows make", "Shows", "Shows/ShowForm"),
        new("EditShow", "shows edit", "Shows", "Shows/ShowForm"),
        new("AddToShow", "shows add", "Shows", "Shows/ShowLists"),
        new("RemoveFromShow", "shows remove", "Shows", "Shows/ShowLists"),
        new("RecordPerson", "person add", "Address book", "AddressBook/PersonForm"),
        new("EditPerson", "person edit", "Address book", "AddressBook/PersonForm"),
        new("RecordPlace", "place add", "Address book", "AddressBook/PlaceForm"),
        new("EditPlace", "place edit", "Address book", "AddressBook/PlaceForm"),
        new("ChangeSettings", "settings", "Address book", "Welcome/SettingsForm"),
        new("MakeRegister", "new", "Welcome", "Welcome/NewRegisterForm"),
        new("MakeDemo", "demo", "Welcome", "Welcome/DemoDoor"),
    ];
}

/// <summary>One use case with its command, its room and the file of the room that does it, without its ending.</summary>
internal sealed record UseCasePlace(string UseCase, string? Command, string? Room, string? File)
{
    public string? WhyNoCommand { get; init; }

    /// <summary>Other commands that do it too, each in words of its own.</summary>
    public IReadOnlyList<string> Also { get; init; } = [];

    public string? WhyNoRoom { get; init; }
}
