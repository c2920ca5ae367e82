#pragma once

#include "documents/order.h"
#include "model/job_editor.h"
#include "store/orders.h"

#include <QObject>

#include <optional>

namespace lapwright::field {

/// The order of the job in hand, taken off when somebody asks and checked before anybody sees it.
class TakeOff : public QObject {
    Q_OBJECT

public:
    TakeOff(const Tablet& tablet, JobEditor& editor, QObject* parent = nullptr);

    /// As it would be sent: identity, revision and hash of the one before, the job's own extras. Its findings
    /// hold those of the piece checker as well. Precondition: a job is open.
    [[nodiscard]] const documents::OrderDocument& document();
    [[nodiscard]] const pieces::Order& order() { return document().value; }
    /// What was sent last; nothing before the first time.
    [[nodiscard]] const std::optional<documents::OrderDocument>& sent();
    /// Nothing changed since it was sent.
    [[nodiscard]] bool isSent();
    /// The reason given for going on in spite of a finding of the job in hand; null if none was.
    [[nodiscard]] const site::Acknowledgement* acknowledgementOf(const rules::Finding& finding) const;
    [[nodiscard]] JobEditor& editor() { return editor_; }
    [[nodiscard]] const Tablet& tablet() const { return tablet_; }

    /// After an order was sent.
    void forget();

signals:
    /// The job changed: what was read from here is out of date.
    void stale();

private:
    void make();

    const Tablet& tablet_;
    JobEditor& editor_;
    bool made_ = false;
    documents::OrderDocument document_;
    std::optional<documents::OrderDocument> sent_;
};

} // namespace lapwright::field
