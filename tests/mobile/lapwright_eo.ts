<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="eo" sourcelanguage="en">
<context>
    <name>Main</name>
    <message>
        <source>Jobs</source>
        <translation>Laboroj</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Domo</translation>
    </message>
</context>
<context>
    <name>lapwright::field::JobEditor</name>
    <message>
        <source>Eave line</source>
        <translation>Tegmentrando</translation>
    </message>
</context>
</TS>
