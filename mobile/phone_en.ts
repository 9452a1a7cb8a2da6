<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>BeginPage</name>
    <message numerus="yes">
        <source>Begin with %n room(s)</source>
        <translation>
            <numerusform>Begin with %n room</numerusform>
            <numerusform>Begin with %n rooms</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PunchListPage</name>
    <message numerus="yes">
        <source>%n punch item(s) open.</source>
        <translation>
            <numerusform>%n punch item open.</numerusform>
            <numerusform>%n punch items open.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SpacePage</name>
    <message numerus="yes">
        <source>All %n to be put right</source>
        <translation>
            <numerusform>The one to be put right</numerusform>
            <numerusform>All %n to be put right</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::HouseView</name>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation>
            <numerusform>%n mark</numerusform>
            <numerusform>%n marks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::NeedList</name>
    <message numerus="yes">
        <source>Look at %n punch item(s) said to be fixed</source>
        <translation>
            <numerusform>Look at %n punch item said to be fixed</numerusform>
            <numerusform>Look at %n punch items said to be fixed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::PeerDesk</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hour</numerusform>
            <numerusform>%n hours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::SpaceList</name>
    <message numerus="yes">
        <source>%n item(s) left, all begun.</source>
        <translation>
            <numerusform>%n item left, all begun.</numerusform>
            <numerusform>%n items left, all begun.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) left, </source>
        <translation>
            <numerusform>%n item left, </numerusform>
            <numerusform>%n items left, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to start.</source>
        <translation>
            <numerusform>%n to start.</numerusform>
            <numerusform>%n to start.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n punch item(s) open.</source>
        <translation>
            <numerusform>%n punch item open.</numerusform>
            <numerusform>%n punch items open.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::WalkDraft</name>
    <message numerus="yes">
        <source>%n word(s) learned</source>
        <translation>
            <numerusform>%n word learned</numerusform>
            <numerusform>%n words learned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) kept</source>
        <translation>
            <numerusform>%n item kept</numerusform>
            <numerusform>%n items kept</numerusform>
        </translation>
    </message>
</context>
</TS>
