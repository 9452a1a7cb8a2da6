<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>BankPanel</name>
    <message numerus="yes">
        <source>Bring in the %n line(s)</source>
        <translation>
            <numerusform>Bring in the %n line</numerusform>
            <numerusform>Bring in the %n lines</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PastePanel</name>
    <message numerus="yes">
        <source>%n row(s) with something wrong:</source>
        <translation>
            <numerusform>%n row with something wrong:</numerusform>
            <numerusform>%n rows with something wrong:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Bring in the %n that are right</source>
        <translation>
            <numerusform>Bring in the %n that are right</numerusform>
            <numerusform>Bring in the %n that are right</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ScheduleWords</name>
    <message numerus="yes">
        <source>%n working day(s) after the target of %1</source>
        <translation>
            <numerusform>%n working day after the target of %1</numerusform>
            <numerusform>%n working days after the target of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n working day(s) before the target of %1</source>
        <translation>
            <numerusform>%n working day before the target of %1</numerusform>
            <numerusform>%n working days before the target of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n finished</source>
        <translation>
            <numerusform>%n finished</numerusform>
            <numerusform>%n finished</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n under way</source>
        <translation>
            <numerusform>%n under way</numerusform>
            <numerusform>%n under way</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without float</source>
        <translation>
            <numerusform>%n without float</numerusform>
            <numerusform>%n without float</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without days take no time here.</source>
        <translation>
            <numerusform>%n item without days takes no time here.</numerusform>
            <numerusform>%n items without days take no time here.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>For %n item(s) goods are ordered and no day tells when they come.</source>
        <translation>
            <numerusform>For %n item goods are ordered and no day tells when they come.</numerusform>
            <numerusform>For %n items goods are ordered and no day tells when they come.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) wait for an inspection, which holds up nothing here.</source>
        <translation>
            <numerusform>%n item waits for an inspection, which holds up nothing here.</numerusform>
            <numerusform>%n items wait for an inspection, which holds up nothing here.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>it was %n working day(s) late</source>
        <translation>
            <numerusform>it was %n working day late</numerusform>
            <numerusform>it was %n working days late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>it will be %n working day(s) late</source>
        <translation>
            <numerusform>it will be %n working day late</numerusform>
            <numerusform>it will be %n working days late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>it was %n working day(s) early</source>
        <translation>
            <numerusform>it was %n working day early</numerusform>
            <numerusform>it was %n working days early</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>it will be %n working day(s) early</source>
        <translation>
            <numerusform>it will be %n working day early</numerusform>
            <numerusform>it will be %n working days early</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It pushes %n: </source>
        <translation>
            <numerusform>It pushes %n: </numerusform>
            <numerusform>It pushes %n: </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The finish moves to %1, %n working day(s) later.</source>
        <translation>
            <numerusform>The finish moves to %1, %n working day later.</numerusform>
            <numerusform>The finish moves to %1, %n working days later.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The finish moves to %1, %n working day(s) sooner.</source>
        <translation>
            <numerusform>The finish moves to %1, %n working day sooner.</numerusform>
            <numerusform>The finish moves to %1, %n working days sooner.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WeekWords</name>
    <message numerus="yes">
        <source>%n working day(s) late</source>
        <translation>
            <numerusform>%n working day late</numerusform>
            <numerusform>%n working days late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n working day(s) early</source>
        <translation>
            <numerusform>%n working day early</numerusform>
            <numerusform>%n working days early</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>If the %n unsigned change(s) are signed: %1.</source>
        <translation>
            <numerusform>If the unsigned change is signed: %1.</numerusform>
            <numerusform>If the %n unsigned changes are signed: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without planned dates are left out of what is planned.</source>
        <translation>
            <numerusform>%n item without planned dates is left out of what is planned.</numerusform>
            <numerusform>%n items without planned dates are left out of what is planned.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without days or dates take no time in the plan.</source>
        <translation>
            <numerusform>%n item without days or dates takes no time in the plan.</numerusform>
            <numerusform>%n items without days or dates take no time in the plan.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without a price count as nothing.</source>
        <translation>
            <numerusform>%n item without a price counts as nothing.</numerusform>
            <numerusform>%n items without a price count as nothing.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bill(s) without an amount count nowhere.</source>
        <translation>
            <numerusform>%n bill without an amount counts nowhere.</numerusform>
            <numerusform>%n bills without an amount count nowhere.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::AlternateForm</name>
    <message numerus="yes">
        <source>%n item(s) of the scope belong to “%1”: drop them there first (Ctrl+3).</source>
        <translation>
            <numerusform>%n item of the scope belongs to “%1”: drop it there first (Ctrl+3).</numerusform>
            <numerusform>%n items of the scope belong to “%1”: drop them there first (Ctrl+3).</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::AlternatesView</name>
    <message numerus="yes">
        <source>%n open</source>
        <translation>
            <numerusform>%n open</numerusform>
            <numerusform>%n open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n decided</source>
        <translation>
            <numerusform>%n decided</numerusform>
            <numerusform>%n decided</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) later</source>
        <translation>
            <numerusform>%n day later</numerusform>
            <numerusform>%n days later</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) sooner</source>
        <translation>
            <numerusform>%n day sooner</numerusform>
            <numerusform>%n days sooner</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It can wait %n working day(s) beyond that before the finish moves; from then a day costs %1.</source>
        <translation>
            <numerusform>It can wait %n working day beyond that before the finish moves; from then a day costs %1.</numerusform>
            <numerusform>It can wait %n working days beyond that before the finish moves; from then a day costs %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::BankDesk</name>
    <message numerus="yes">
        <source>%1: %n line(s) of the bank</source>
        <translation>
            <numerusform>%1: %n line of the bank</numerusform>
            <numerusform>%1: %n lines of the bank</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::BankSheet</name>
    <message numerus="yes">
        <source>%n other line(s) filed with it</source>
        <translation>
            <numerusform>%n other line filed with it</numerusform>
            <numerusform>%n other lines filed with it</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::BaselineForm</name>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them have no price and count as 0.</source>
        <translation>
            <numerusform>%n of them has no price and counts as 0.</numerusform>
            <numerusform>%n of them have no price and count as 0.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them have no planned dates and are left out of the plan; the schedule can keep its days first (Ctrl+5, then Ctrl+K).</source>
        <translation>
            <numerusform>%n of them has no planned dates and is left out of the plan; the schedule can keep its days first (Ctrl+5, then Ctrl+K).</numerusform>
            <numerusform>%n of them have no planned dates and are left out of the plan; the schedule can keep their days first (Ctrl+5, then Ctrl+K).</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ClosingView</name>
    <message numerus="yes">
        <source>%1 of %n item(s) finished.</source>
        <translation>
            <numerusform>%1 of %n item finished.</numerusform>
            <numerusform>%1 of %n items finished.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) stand between this job and finished.</source>
        <translation>
            <numerusform>%n thing stands between this job and finished.</numerusform>
            <numerusform>%n things stand between this job and finished.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::DealView</name>
    <message numerus="yes">
        <source>%n week(s) later</source>
        <translation>
            <numerusform>%n week later</numerusform>
            <numerusform>%n weeks later</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n week(s) earlier</source>
        <translation>
            <numerusform>%n week earlier</numerusform>
            <numerusform>%n weeks earlier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of float to the term end of the loan.</source>
        <translation>
            <numerusform>%n day of float to the term end of the loan.</numerusform>
            <numerusform>%n days of float to the term end of the loan.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The sale comes %n day(s) after the term end: the extension fee is counted.</source>
        <translation>
            <numerusform>The sale comes %n day after the term end: the extension fee is counted.</numerusform>
            <numerusform>The sale comes %n days after the term end: the extension fee is counted.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::Desk</name>
    <message numerus="yes">
        <source>%n word(s) learned</source>
        <translation>
            <numerusform>%n word learned</numerusform>
            <numerusform>%n words learned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other device(s).</source>
        <translation>
            <numerusform>%n other device.</numerusform>
            <numerusform>%n other devices.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) wait for the peer.</source>
        <translation>
            <numerusform>%n change waits for the peer.</numerusform>
            <numerusform>%n changes wait for the peer.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::DrawsView</name>
    <message numerus="yes">
        <source>%n item(s) point at no lender line: nothing is lent on them.</source>
        <translation>
            <numerusform>%n item points at no lender line: nothing is lent on it.</numerusform>
            <numerusform>%n items point at no lender line: nothing is lent on them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Draw %1 asked for: %2 over %n line(s)</source>
        <translation>
            <numerusform>Draw %1 asked for: %2 over %n line</numerusform>
            <numerusform>Draw %1 asked for: %2 over %n lines</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::GoodsSheet</name>
    <message numerus="yes">
        <source>%n day(s) from order to delivery.</source>
        <translation>
            <numerusform>%n day from order to delivery.</numerusform>
            <numerusform>%n days from order to delivery.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::JobList</name>
    <message numerus="yes">
        <source>%n job(s) not in the sums.</source>
        <translation>
            <numerusform>%n job not in the sums.</numerusform>
            <numerusform>%n jobs not in the sums.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) cannot say yet what they will earn.</source>
        <translation>
            <numerusform>%n job cannot say yet what they will earn.</numerusform>
            <numerusform>%n jobs cannot say yet what they will earn.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::MoneyHead</name>
    <message numerus="yes">
        <source>%n change(s) asked and not decided; if signed %1.</source>
        <translation>
            <numerusform>%n change asked and not decided; if signed %1.</numerusform>
            <numerusform>%n changes asked and not decided; if signed %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) without an amount: counted nowhere until it is entered.</source>
        <translation>
            <numerusform>%n row without an amount: counted nowhere until it is entered.</numerusform>
            <numerusform>%n rows without an amount: counted nowhere until it is entered.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PasteDesk</name>
    <message numerus="yes">
        <source>%n row(s) brought in</source>
        <translation>
            <numerusform>%n row brought in</numerusform>
            <numerusform>%n rows brought in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) copied</source>
        <translation>
            <numerusform>%n row copied</numerusform>
            <numerusform>%n rows copied</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) from a spreadsheet</source>
        <translation>
            <numerusform>%n row from a spreadsheet</numerusform>
            <numerusform>%n rows from a spreadsheet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new item(s)</source>
        <translation>
            <numerusform>%n new item</numerusform>
            <numerusform>%n new items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) to items that are there</source>
        <translation>
            <numerusform>%n change to items that are there</numerusform>
            <numerusform>%n changes to items that are there</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n already there as they are</source>
        <translation>
            <numerusform>%n already there as they are</numerusform>
            <numerusform>%n already there as they are</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PriceSheet</name>
    <message numerus="yes">
        <source>%n price(s)</source>
        <translation>
            <numerusform>%n price</numerusform>
            <numerusform>%n prices</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them price items of this job</source>
        <translation>
            <numerusform>%n of them price items of this job</numerusform>
            <numerusform>%n of them price items of this job</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from order to delivery.</source>
        <translation>
            <numerusform>%n day from order to delivery.</numerusform>
            <numerusform>%n days from order to delivery.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PunchSheet</name>
    <message numerus="yes">
        <source>%n late</source>
        <translation>
            <numerusform>%n late</numerusform>
            <numerusform>%n late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a cost</source>
        <translation>
            <numerusform>%n without a cost</numerusform>
            <numerusform>%n without a cost</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to put right</source>
        <translation>
            <numerusform>%n to put right</numerusform>
            <numerusform>%n to put right</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::RecordSheet</name>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation>
            <numerusform>%n row</numerusform>
            <numerusform>%n rows</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) dropped</source>
        <translation>
            <numerusform>%n row dropped</numerusform>
            <numerusform>%n rows dropped</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ScheduleView</name>
    <message numerus="yes">
        <source>Planned dates of %n item(s) kept</source>
        <translation>
            <numerusform>Planned dates of %n item kept</numerusform>
            <numerusform>Planned dates of %n items kept</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n link(s) in the usual order of the trades</source>
        <translation>
            <numerusform>%n link in the usual order of the trades</numerusform>
            <numerusform>%n links in the usual order of the trades</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ScopeSheet</name>
    <message numerus="yes">
        <source>%n row(s) filled</source>
        <translation>
            <numerusform>%n row filled</numerusform>
            <numerusform>%n rows filled</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) dropped</source>
        <translation>
            <numerusform>%n item dropped</numerusform>
            <numerusform>%n items dropped</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) copied</source>
        <translation>
            <numerusform>%n row copied</numerusform>
            <numerusform>%n rows copied</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n kept or open, in no sum</source>
        <translation>
            <numerusform>%n kept or open, in no sum</numerusform>
            <numerusform>%n kept or open, in no sum</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a price</source>
        <translation>
            <numerusform>%n without a price</numerusform>
            <numerusform>%n without a price</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) finished</source>
        <translation>
            <numerusform>%n item finished</numerusform>
            <numerusform>%n items finished</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::Sheet</name>
    <message numerus="yes">
        <source>%n row(s) copied</source>
        <translation>
            <numerusform>%n row copied</numerusform>
            <numerusform>%n rows copied</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::SpendSheet</name>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::VisitSheet</name>
    <message numerus="yes">
        <source>%n line(s) allowed as asked</source>
        <translation>
            <numerusform>%n line allowed as asked</numerusform>
            <numerusform>%n lines allowed as asked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::WalkDesk</name>
    <message numerus="yes">
        <source>%n word(s) learned</source>
        <translation>
            <numerusform>%n word learned</numerusform>
            <numerusform>%n words learned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open choice(s)</source>
        <translation>
            <numerusform>%n open choice</numerusform>
            <numerusform>%n open choices</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fact(s)</source>
        <translation>
            <numerusform>%n fact</numerusform>
            <numerusform>%n facts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were there already</source>
        <translation>
            <numerusform>%n was there already</numerusform>
            <numerusform>%n were there already</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to be looked at</source>
        <translation>
            <numerusform>%n to be looked at</numerusform>
            <numerusform>%n to be looked at</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dropped</source>
        <translation>
            <numerusform>%n dropped</numerusform>
            <numerusform>%n dropped</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::WeekView</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
</TS>
