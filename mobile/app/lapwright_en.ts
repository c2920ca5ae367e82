<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>CheckScreen</name>
    <message numerus="yes">
        <source>%n must be put right</source>
        <translation>
            <numerusform>%n must be put right</numerusform>
            <numerusform>%n must be put right</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to look at</source>
        <translation>
            <numerusform>%n to look at</numerusform>
            <numerusform>%n to look at</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JobsScreen</name>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Language</name>
    <message>
        <source>English</source>
        <translation>English</translation>
    </message>
</context>
<context>
    <name>OrderSide</name>
    <message numerus="yes">
        <source>%n pieces</source>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n findings block this order</source>
        <translation>
            <numerusform>%n finding blocks this order</numerusform>
            <numerusform>%n findings block this order</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to look at first</source>
        <translation>
            <numerusform>%n to look at first</numerusform>
            <numerusform>%n to look at first</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos go along in one ZIP</source>
        <translation>
            <numerusform>%n photo goes along in one ZIP</numerusform>
            <numerusform>%n photos go along in one ZIP</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them are no longer on this tablet</source>
        <translation>
            <numerusform>%n of them is no longer on this tablet</numerusform>
            <numerusform>%n of them are no longer on this tablet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ProfileCard</name>
    <message numerus="yes">
        <source>%1, %2, girth %3, %n pieces</source>
        <translation>
            <numerusform>%1, %2, girth %3, %n piece</numerusform>
            <numerusform>%1, %2, girth %3, %n pieces</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TrimScreen</name>
    <message numerus="yes">
        <source>Usual trim on %n runs that have none</source>
        <translation>
            <numerusform>Usual trim on %n run that has none</numerusform>
            <numerusform>Usual trim on %n runs that have none</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwright::field::DeliveryCheck</name>
    <message numerus="yes">
        <source>Only %n are left to count of this mark.</source>
        <translation>
            <numerusform>Only %n is left to count of this mark.</numerusform>
            <numerusform>Only %n are left to count of this mark.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwright::field::FieldApp</name>
    <message numerus="yes">
        <source>%n photos did not come with this order, or were altered on the way.</source>
        <translation>
            <numerusform>%n photo did not come with this order, or was altered on the way.</numerusform>
            <numerusform>%n photos did not come with this order, or were altered on the way.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwright::field::JobEditor</name>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwright::field::OrderModel</name>
    <message numerus="yes">
        <source>%n findings block this order; resolve them first.</source>
        <translation>
            <numerusform>%n finding blocks this order; resolve it first.</numerusform>
            <numerusform>%n findings block this order; resolve them first.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwright::field::RunList</name>
    <message numerus="yes">
        <source>%n measures</source>
        <translation>
            <numerusform>%n measure</numerusform>
            <numerusform>%n measures</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwright::field::TrimModel</name>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n without trim</source>
        <translation>
            <numerusform>%1 of %n without trim</numerusform>
            <numerusform>%1 of %n without trim</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n</source>
        <translation>
            <numerusform>All %n</numerusform>
            <numerusform>All %n</numerusform>
        </translation>
    </message>
</context>
</TS>
