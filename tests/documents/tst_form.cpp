// Guards: a document filled in through its form says exactly what was filled in and nothing else changes;
// every value of the shipped library has its field; parts are added with what has to be in them and taken out
// again.
#include "documents/form.h"
#include "documents/json_text.h"
#include "documents/schema.h"
#include "source_directory.h"

#include <QDir>
#include <QFile>
#include <QtTest>

#include <algorithm>

using namespace lapwright;
using namespace lapwright::documents;
using Kind = FormField::Kind;

namespace {

std::string textIn(const QString& path)
{
    QFile file(path);
    return file.open(QFile::ReadOnly) ? file.readAll().toStdString() : std::string();
}

std::string shipped(const char* file)
{
    return textIn(QString::fromStdString(sourceDirectory()) + "/shared-core/" + file);
}

const FormField* find(const std::vector<FormField>& form, const std::string& pointer)
{
    const auto found = std::find_if(form.begin(), form.end(),
                                    [&](const FormField& field) { return field.pointer == pointer; });
    return found == form.end() ? nullptr : &*found;
}

bool isHeading(const FormField& field)
{
    return field.kind == Kind::Part || field.kind == Kind::Items || field.kind == Kind::Item;
}

/// Numbers and texts anywhere in the value; a list of them is one, an empty one is none.
int valuesIn(const Json& value)
{
    if (!value.is_structured())
        return 1;
    if (value.is_array() && !value.empty() && !value.front().is_object())
        return 1;
    int count = 0;
    for (const Json& inside : value)
        count += valuesIn(inside);
    return count;
}

constexpr const char* machine = "machines/long-folder-up.json";
constexpr const char* machineSchema = "machine.schema.json";

} // namespace

class TestForm : public QObject {
    Q_OBJECT

private slots:
    void everyShippedDocumentHasAFieldForEachValueAndKeepsItWhenFilledInAsItStands_data()
    {
        QTest::addColumn<QString>("path");
        QTest::addColumn<QString>("schema");
        const QDir core(QString::fromStdString(sourceDirectory()) + "/shared-core");
        const std::array<std::pair<const char*, const char*>, 3> folders{
            {{"machines", "machine.schema.json"},
             {"trim-library", "trim.schema.json"},
             {"rule-sets", "rules.schema.json"}}};
        for (const auto& [folder, schema] : folders)
            for (const QFileInfo& file : QDir(core.filePath(folder)).entryInfoList({"*.json"}))
                QTest::newRow(qPrintable(file.fileName())) << file.filePath() << QString(schema);
    }
    void everyShippedDocumentHasAFieldForEachValueAndKeepsItWhenFilledInAsItStands()
    {
        QFETCH(const QString, path);
        QFETCH(const QString, schema);
        const std::string document = textIn(path);
        const Json before = *parseJson(document);
        const auto form = formOf(schema.toStdString(), document);
        QVERIFY(form.ok());
        int given = 0;
        for (const FormField& field : *form) {
            if (isHeading(field) || !field.given)
                continue;
            given += field.text.empty() ? 0 : 1;
            const auto after = field.length ? filledIn(document, field, *field.length)
                                            : filledIn(document, field, field.text);
            QVERIFY2(after.ok(), field.pointer.c_str());
            QVERIFY2(*parseJson(*after) == before, field.pointer.c_str());
        }
        // All but format and version.
        QCOMPARE(given, valuesIn(before) - 2);
    }

    void whatIsFilledInStandsThereAndNothingElseChanges()
    {
        const std::string document = shipped(machine);
        Json before = *parseJson(document);
        const auto form = formOf(machineSchema, document);
        const FormField* length = find(*form, "/bending_length_mm");
        QVERIFY(length != nullptr && length->kind == Kind::Length && length->required &&
                !length->help.empty());
        const auto longer = filledIn(document, *length, Length::inches(126));
        before["bending_length_mm"] = 3200.4;
        QVERIFY(*parseJson(*longer) == before);
        QVERIFY(longer->find("3200.4") != std::string::npos);
        const FormField* hems = find(*form, "/flattens_hems");
        QVERIFY(hems != nullptr && hems->kind == Kind::YesNo);
        const auto without = filledIn(*longer, *hems, "false");
        before["flattens_hems"] = false;
        QVERIFY(*parseJson(*without) == before);
        // Members stay in their order.
        QVERIFY(without->find("\"format\"") < without->find("\"bending_length_mm\""));
    }

    void whatIsNoNumberIsRefusedAndNothingTakesAFieldOut()
    {
        const std::string document =
            R"({"format": "lapwright/rates", "version": 1, "currency": "USD", "materials": [], "waste_percent": 5})";
        const auto form = formOf("rates.schema.json", document);
        const FormField* waste = find(*form, "/waste_percent");
        QVERIFY(waste != nullptr && waste->kind == Kind::Whole);
        for (const char* wrong : {"five", "5.5", "5 6", "{}", "-"})
            QVERIFY2(!filledIn(document, *waste, wrong).ok(), wrong);
        const auto out = filledIn(document, *waste, " ");
        QVERIFY(!parseJson(*out)->contains("waste_percent"));
        const auto again = formOf("rates.schema.json", *out);
        QVERIFY(find(*again, "/waste_percent") != nullptr && !find(*again, "/waste_percent")->given);
        // What is required stays, and is for the schema to judge.
        const auto empty = filledIn(document, *find(*form, "/currency"), "");
        QCOMPARE((*parseJson(*empty))["currency"], Json(""));
        QVERIFY(!formOf("rates.schema.json", "[1]").ok());
        QVERIFY(!formOf("rates.schema.json", "{").ok());
    }

    void moreMembersThanAnybodyFillsInAreNoForm()
    {
        // Members in their order cost as much as their number squared.
        Json document = *parseJson(shipped(machine));
        for (int member = 0; member < 9'000; ++member)
            document["x" + std::to_string(member)] = member;
        const auto form = formOf(machineSchema, document.dump());
        QVERIFY(form.ok() && find(*form, "/bending_length_mm") != nullptr);
        for (int member = 9'000; member < 100'000; ++member)
            document["x" + std::to_string(member)] = member;
        const auto refused = formOf(machineSchema, document.dump());
        QVERIFY(!refused.ok());
        QCOMPARE(refused.errors().front().found, std::string("more than 10000 values"));
        QVERIFY(!without(document.dump(), *find(*form, "/flattens_hems")).ok());
    }

    void partsAreAddedAndTakenOut()
    {
        const std::string document = shipped(machine);
        const auto form = formOf(machineSchema, document);
        const FormField* trials = find(*form, "/measured_springback");
        QVERIFY(trials != nullptr && trials->kind == Kind::Items);
        const std::size_t before = parseJson(document)->value("measured_springback", Json::array()).size();
        auto more = withMore(machineSchema, document, *trials);
        more = withMore(machineSchema, *more, *trials);
        const Json added = (*parseJson(*more))["measured_springback"];
        QCOMPARE(added.size(), before + 2);
        QCOMPARE(added[before], added[before + 1]);
        for (const char* member : {"metal", "gauge", "fold_degrees", "set_degrees"})
            QVERIFY2(added[before].contains(member), member);
        const auto now = formOf(machineSchema, *more);
        const FormField* item = find(*now, "/measured_springback/" + std::to_string(before));
        QVERIFY(item != nullptr && item->kind == Kind::Item);
        const auto fewer = without(*more, *item);
        QCOMPARE((*parseJson(*fewer))["measured_springback"].size(), before + 1);

        // A part that is not there comes with what has to be in it.
        const FormField gauge{Kind::Part, "/back_gauge", "back_gauge", "", 0, true, false, "", {}, {}, false};
        const auto blind = without(document, gauge);
        QVERIFY(!parseJson(*blind)->contains("back_gauge"));
        const auto offered = formOf(machineSchema, *blind);
        QVERIFY(find(*offered, "/back_gauge") != nullptr && !find(*offered, "/back_gauge")->given);
        QVERIFY(find(*offered, "/back_gauge/most_mm") == nullptr);
        const auto seeing = withMore(machineSchema, *blind, *find(*offered, "/back_gauge"));
        QVERIFY((*parseJson(*seeing))["back_gauge"].contains("most_mm"));
    }

    void pointsAndHoursAreListsOneCanType()
    {
        const std::string document = shipped(machine);
        const auto form = formOf(machineSchema, document);
        const FormField* bed = find(*form, "/bed");
        QVERIFY(bed != nullptr && bed->kind == Kind::List && bed->ofNumbers);
        const auto typed = filledIn(document, *bed, "0, 0; -40.5,-300 ;10, -300;");
        QCOMPARE((*parseJson(*typed))["bed"], Json::parse("[[0,0],[-40.5,-300],[10,-300]]"));
        QVERIFY(!filledIn(document, *bed, "0, 0; a, 1").ok());
        const std::string floor =
            R"({"format": "lapwright/floor", "version": 1, "hours": {"monday": ["07:00-12:00"]}, "machines": []})";
        const auto hours = formOf("floor.schema.json", floor);
        const FormField* monday = find(*hours, "/hours/monday");
        QVERIFY(monday != nullptr && monday->kind == Kind::List && monday->text == "07:00-12:00");
        const auto longer = filledIn(floor, *monday, "07:00-12:00, 12:30-16:00");
        QCOMPARE((*parseJson(*longer))["hours"]["monday"], Json::parse(R"(["07:00-12:00", "12:30-16:00"])"));
    }
};

QTEST_APPLESS_MAIN(TestForm)
#include "tst_form.moc"
