#pragma once

#include "documents/job.h"
#include "store/jobs.h"

#include <QTemporaryDir>

#include <string>

/// Invented jobs, and a person who works on one, for the tests of the tablet's database.
namespace lapwright::store {

inline std::string idOf(int number)
{
    return QString("00000000-0000-4000-8000-%1").arg(number, 12, 10, QChar('0')).toStdString();
}

inline site::Job invented(int number)
{
    site::Job job;
    job.id = idOf(number);
    job.name = "House " + std::to_string(number);
    job.customer = number % 2 == 0 ? "Even Builders" : "Odd Builders";
    job.material = {"galvanised-steel", "24 ga", "Slate"};
    return job;
}

inline std::string textOf(const site::Job& job)
{
    return documents::writeJob({job, {}}, documents::Layout::Canonical);
}

inline std::string timeOf(int number)
{
    return QString("2026-11-25T10:00:%1.%2Z")
        .arg(number / 1000 % 60, 2, 10, QChar('0'))
        .arg(number % 1000, 3, 10, QChar('0'))
        .toStdString();
}

/// A person at work on one job of a database in a folder of its own.
struct Desk {
    QTemporaryDir folder;
    QString path = folder.filePath("tablet.db");
    Connection connection = *Connection::open(path);
    site::Job job = invented(1);
    KeptJob kept;
    int acts = 0;

    Desk()
    {
        addJob(connection, job, textOf(job), {"job.new", "started", timeOf(0)});
        kept = *keptJob(connection, job.id);
    }
    void act(const std::string& name)
    {
        job.name = name;
        kept = commitAct(connection, job, kept, textOf(job), {"head.name", "name", timeOf(++acts)});
    }
    bool step(Way way)
    {
        const auto next = stepFrom(connection, job.id, kept, way);
        if (!next)
            return false;
        job = documents::readJob(next->document)->value;
        kept = commitStep(connection, job, kept, *next, way, timeOf(++acts));
        return true;
    }
};

} // namespace lapwright::store
