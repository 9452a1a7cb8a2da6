<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES">
<context>
    <name>AskSpacePage</name>
    <message>
        <source>In which space?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BeginPage</name>
    <message>
        <source>Begin a job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Street and number, or what you call it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year it was built, where known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Houses built before 1978 bring cautions about old paint; the year decides which.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its rooms, as you walk them</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Begin with %n room(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Belt</name>
    <message>
        <source>Mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Punch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Receipt</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CautionPanel</name>
    <message>
        <source>Caution: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result of a test, where there is one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Choice</name>
    <message>
        <source>chosen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DevicesPage</name>
    <message>
        <source>Devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This phone meets no peer yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meeting ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meet the peer now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An owner makes an invitation, which shows an address and a code of five groups. The book on this phone comes along where the invitation is an owner&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address, or all that the picture says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DraftPage</name>
    <message>
        <source>Walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what is to be done here, in English. Each item read can be dropped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HousePage</name>
    <message>
        <source>less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs you today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing needs you today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This phone: light, type, hand, language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Devices: what waits, joining, meeting</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HouseStrip</name>
    <message>
        <source>The whole house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on screen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeyPad</name>
    <message>
        <source>Rub out the last digit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookPage</name>
    <message>
        <source>Accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not right: fix again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MarkButtons</name>
    <message>
        <source>Finished</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MarkFigure</name>
    <message>
        <source>One step less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MarkListPage</name>
    <message>
        <source>How far is it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it is finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finished: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MarkPage</name>
    <message>
        <source>How far it is: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A word, if something stands in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NewJob</name>
    <message>
        <source>Give the house a name, such as its street and number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The year it was built has four digits, such as 1936; leave it empty where nobody knows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owner</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NotePage</name>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only owners read notes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it, or use the keyboard&apos;s microphone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PageHead</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoPage</name>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touch a picture to keep it here. The original stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>During</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before, from this spot: stand where it was taken.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoStrip</name>
    <message>
        <source>not on this phone yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PictureGrid</name>
    <message>
        <source>No pictures on this phone yet. Take one with its camera, then come back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for new pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, taken</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PictureKeeper</name>
    <message>
        <source>%1 cannot be read as a picture.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PreferencesPage</name>
    <message>
        <source>This phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out in the sun: black on white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % of its size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand and motion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the left hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing moves by itself</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PunchPage</name>
    <message>
        <source>Punch item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the punch item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is to be put right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By when</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReceiptPage</name>
    <message>
        <source>Receipt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is left out can be written in later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the receipt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it was bought</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RoomsPicker</name>
    <message>
        <source>Entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Living room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dining room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hall bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front bedroom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back bedroom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Primary bedroom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Primary bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laundry room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Basement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Garage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Porch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, room %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Said</name>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refinish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relocate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>How a day is written, in Qt&apos;s letters: &quot;Fri 15 May&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, due since %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SpaceDelegate</name>
    <message>
        <source>no work</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SpacePage</name>
    <message>
        <source>Nothing is written down for this space. A note is a beginning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be put right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk it: say what is to be done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>The book does not open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No job in this book yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which house?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It comes with the first meeting with its peer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A job is a house under renovation, kept in a book: one file on this phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin a job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Books (*.book)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meet the peer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join one by a code</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepsPicker</name>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UndoNote</name>
    <message>
        <source>Not kept. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WalkPage</name>
    <message>
        <source>No rooms yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk notes read on the desktop bring them in; so does meeting another device.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::HouseView</name>
    <message>
        <source>%1, week %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept on this phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 wait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>will cost what was budgeted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>will cost &lt;b&gt;%1 more&lt;/b&gt; than budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>will cost &lt;b&gt;%1 less&lt;/b&gt; than budget</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::ItemList</name>
    <message>
        <source>Another crew&apos;s work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready to be looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan says %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begins %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not cover before it is looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution: %1. Read it before work begins.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::JobBook</name>
    <message>
        <source>Undone: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::MarkDesk</name>
    <message>
        <source>%1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raised by: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the caution first, and say that you have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution on %1: noted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::NeedList</name>
    <message numerus="yes">
        <source>Look at %n punch item(s) said to be fixed</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Has it come: %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say yes or no to %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the caution on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at %1: the crew says it is ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: its insurance has ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave %1 open until it is looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>promised for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since %1. No payment to them until it is renewed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::NoteList</name>
    <message>
        <source>Note kept</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::PeerDesk</name>
    <message>
        <source>met the peer %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An owner shut this phone out. Its copy is gone; what the peer had already is not lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up: %1 changes, %2 photos. Down: %3 changes, %4 photos.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::PictureFolder</name>
    <message>
        <source>Picture of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::PunchItems</name>
    <message>
        <source>Said fixed on %1, not looked at yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked at on %1: not right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say in a few words what is to be put right, or show it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Punch item kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Punch item accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Punch item sent back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Said to be fixed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::ReceiptDesk</name>
    <message>
        <source>The whole house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A receipt needs its picture or its amount.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Receipt kept: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Receipt kept; its amount is still to come</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::SitePhotos</name>
    <message>
        <source>before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>during</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo kept, %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::SpaceList</name>
    <message>
        <source>Nothing to be done here yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything is finished.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) left, all begun.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) left, </source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to start.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n punch item(s) open.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The whole house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No name</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::WalkDraft</name>
    <message>
        <source>No work was read from that. Say what is done to what, such as &quot;replace the sink&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) kept</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
</TS>
