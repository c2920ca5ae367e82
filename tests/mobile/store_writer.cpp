#include "documents/job.h"
#include "store/jobs.h"

#include <QByteArray>
#include <QCoreApplication>

#include <cstdio>
#include <random>

using namespace lapwright;

namespace {

/// A scripted person who works on one job until somebody kills them: changes, undoes, does again. After every
/// act that the store has acknowledged, one line goes out: "kept SEQ SIZE".
class Person {
public:
    Person(const store::Connection& connection, const std::string& id, unsigned seed)
        : connection_(connection), id_(id), kept_(*store::keptJob(connection, id)),
          job_(documents::readJob(kept_.document)->value), random_(seed)
    {
    }

    [[noreturn]] void work()
    {
        for (;;) {
            const unsigned what = random_() % 4;
            if (what == 0)
                step(store::Way::Undo);
            else if (what == 1)
                step(store::Way::Redo);
            else
                rename();
            std::printf("kept %lld %zu\n", static_cast<long long>(kept_.lastAct), kept_.document.size());
            std::fflush(stdout);
        }
    }

private:
    void rename()
    {
        job_.name = std::string(random_() % 200, static_cast<char>('a' + random_() % 26));
        kept_ = store::commitAct(connection_, job_, kept_,
                                 documents::writeJob({job_, {}}, documents::Layout::Canonical),
                                 {"head.name", "name", "2026-11-25T10:00:00.000Z"});
    }
    void step(store::Way way)
    {
        if (const auto next = store::stepFrom(connection_, id_, kept_, way)) {
            job_ = documents::readJob(next->document)->value;
            kept_ = store::commitStep(connection_, job_, kept_, *next, way, "2026-11-25T10:00:00.000Z");
        }
    }

    const store::Connection& connection_;
    std::string id_;
    store::KeptJob kept_;
    site::Job job_;
    std::mt19937 random_;
};

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const auto connection = store::Connection::open(argv[1]);
    if (!connection.ok()) {
        std::fprintf(stderr, "%s\n", connection.errors().front().sentence().c_str());
        return 3;
    }
    Person(*connection, argv[2], static_cast<unsigned>(std::stoul(argv[3]))).work();
}
