<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AnswerList</name>
    <message>
        <source>Asked every week</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayLine</name>
    <message>
        <source>As of today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As of which day? Empty: today</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Dividers</name>
    <message>
        <source>All jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JobDelegate</name>
    <message>
        <source>…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no items yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JobsPage</name>
    <message>
        <source>A book without a job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has not met its peer yet, or nothing was begun in it. Begin a job below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it will cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spent so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will earn, before income tax</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will earn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against budget</source>
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
</context>
<context>
    <name>KeptNote</name>
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
    <name>KeyPad</name>
    <message>
        <source>Rub out the last digit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeysPanel</name>
    <message>
        <source>a page of the folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the list of jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes back what was done last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as of another day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the next part of the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>these keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opens its folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the curve: another day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the curve: its table, and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up and down the page; in a list, another line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a line: the page it leads to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the page as one sheet (PDF)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeps it as this week&apos;s review</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another cell; with Shift, several rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edits the cell; Enter keeps, Esc leaves it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filter the rows; Backspace and Esc undo that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groups by space, trade, crew, or not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fills the rows chosen with the top one&apos;s cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copies the rows for a spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brings in rows copied from a spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new item in this space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clears the cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drops the item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take-off: the quantity from sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the price book&apos;s price, not its own</source>
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
        <source>There is a job of that name in the book: give this one another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owner</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NewJobForm</name>
    <message>
        <source>Name of the job, such as street and number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built (where known)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin this job</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastePanel</name>
    <message>
        <source>Can come in: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) with something wrong:</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring in nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring them in</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Bring in the %n that are right</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Copy the wrong rows</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlotTable</name>
    <message>
        <source>Week to</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RoomList</name>
    <message>
        <source>By room</source>
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
        <source>ddd d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <extracomment>A day in full, in Qt&apos;s letters: &quot;Friday 15 May 2026&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>A day along an axis, in Qt&apos;s letters: &quot;15 May&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScopeEmpty</name>
    <message>
        <source>Nothing is to be done yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what is to be done and where, such as “Kitchen: replace faucet”, or copy the rows of a spreadsheet and paste them here: you see what is wrong with them before anything comes in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste rows</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScopeFoot</name>
    <message>
        <source>Lines by today&apos;s prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Budget now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScopePage</name>
    <message>
        <source>Scope of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only with:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is to be done? Such as “replace faucet”; in another space: “Hall bath: replace faucet”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScopeSheet</name>
    <message>
        <source>Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Object</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lump sum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetView</name>
    <message>
        <source>No row has all of “%1”. Esc shows every row.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>The numbers of a house under renovation, from the first walk to the sale: one book for all your jobs, one file on this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in it was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at a house made up for show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening the book…</source>
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
</context>
<context>
    <name>TakeOffPanel</name>
    <message>
        <source>Take-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy %1: %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arithmetic: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ThemeLink</name>
    <message>
        <source>Light pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark pages</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TradeTable</name>
    <message>
        <source>Budget now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Committed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Billed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over or early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money by trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeekCurve</name>
    <message>
        <source>Planned, earned, spent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to draw yet: no item has planned dates, and nothing was marked or billed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeekEmpty</name>
    <message>
        <source>There is nothing to add up yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter what is to be done in each room, or paste it from a spreadsheet; then the page says what it will cost, when it will finish and what it will earn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the scope of work</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeekPage</name>
    <message>
        <source>Adding up the week…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as review</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What moved it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to compare with until a baseline is set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On Monday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing stands out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next 14 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is due in the next 14 days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers missing (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page as one sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeekPlot</name>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>earned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money over time: </source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeekSheet</name>
    <message>
        <source>Planned, earned, spent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What moved it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money by trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Budget now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Committed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Billed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over or early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On Monday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more, on the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next 14 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders only: rules change by place; ask your building office and a licensed trade.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeekWords</name>
    <message>
        <source>on time</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n working day(s) late</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n working day(s) early</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>on budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 over budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 under budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8 in 10 between %1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, was %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>items wait for each other in a ring: no day can be told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter days or planned dates of the items to see it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no finish was planned to compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will earn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of resale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; a day costs %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cash, lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter ᳊sh at start” of the job to see it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 leaves in 14 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a draw of %1 lands about %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a draw lands about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week, to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week %1, planned for %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work has not begun.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No baseline yet, so nothing to compare with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last review %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside the baseline of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since the baseline of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since %1</source>
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
    <message>
        <source>hairlines at ଒&#xa0;% of budget, ends at the contingency left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hairlines at ଒&#xa0;% of budget, ends at ±%1, for the contingency left is less than the hairlines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spent %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paid %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of budget.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>If the %n unsigned change(s) are signed: %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Unknowns expected: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contingency left %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contingency left %1 of %2, against unknowns of %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A buyer with a government-insured loan may sign from day 91, %1. Double the price: no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A buyer with a government-insured loan may sign from day 91, %1. Double the price: yes, so a second appraisal up to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without planned dates are left out of what is planned.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without days or dates take no time in the plan.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without a price count as nothing.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bill(s) without an amount count nowhere.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Not entered, so nothing in will earn: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>early %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delivery of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspection: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pay %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, money expected</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::Desk</name>
    <message>
        <source>This week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is at %1. It may have been moved or renamed: open it where it is now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a file of another kind. A book&apos;s file mostly ends in “.book”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>demo house.book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no book here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book was written by a newer program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book can only be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This book is damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept on this computer; it has met no peer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n other device(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The peer has all that was written here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) wait for the peer.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Scope of work</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::JobList</name>
    <message>
        <source>The sums are too large to be added up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 jobs added up so far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) not in the sums.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) cannot say yet what they will earn.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PasteDesk</name>
    <message>
        <source>There is nothing on the clipboard: copy rows in a spreadsheet first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) brought in</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) copied</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Looking at the rows…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These rows cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) from a spreadsheet</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new item(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) to items that are there</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n already there as they are</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>; new spaces: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No row of headings was copied, so the columns are taken as those of the sheet: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>row %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ScopeSheet</name>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose several rows first: Shift with the arrow down, from the cell to be filled down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) filled</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) dropped</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Priced from the price book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) copied</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>By space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In one list</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n kept or open, in no sum</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a price</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Priced by its own lump sum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Priced by its own costs a unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not priced: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Priced from the price book, a %1: material %2, labour %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, waste %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; no source was entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, as of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Priced from the price book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Budget now %1, billed %2, forecast %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept as it is: in no count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept as it is: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Belongs to an option that is not the one carried: in no sum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read from: “%1”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::TakeOffDesk</name>
    <message>
        <source>%1: “%2” is no number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>else %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waste %1&#xa0;%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::WeekView</name>
    <message>
        <source>Scope of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alternates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contracts and orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Punch list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All others (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Reminders only: rules change by place; ask your building office and a licensed trade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The review of %1 is kept already: a review stays as it was that day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept as the review of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: check the folder and the disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet is at %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
