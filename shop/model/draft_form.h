#pragma once

#include "documents/form.h"
#include "measure/result.h"
#include "measure/writing.h"

#include <QAbstractListModel>
#include <QHash>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <string>
#include <vector>

namespace lapwright::model {

/// A value that a person may choose, and what it is called.
struct Offered {
    std::string value;
    QString word;

    friend bool operator==(const Offered&, const Offered&) = default;
};

/// What is offered in fields that the schema leaves open, by JSON pointer.
using Offers = std::map<std::string, std::vector<Offered>>;

/// A document as fields to fill in, as its schema describes it. Each change is written
/// into the document at once; what cannot be read stays in its field as it was typed and says why.
class DraftForm : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by its draft")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
    /// The fields are those of an earlier text, because it has changed since or is no document now: nothing
    /// is filled in until they are shown again.
    Q_PROPERTY(bool stale READ stale NOTIFY staleChanged FINAL)

public:
    enum Role {
        KindRole = Qt::UserRole + 1, ///< a documents::FormField::Kind
        LabelRole,
        HelpRole,
        ValueRole,
        UnitRole,
        ChoicesRole,
        ChoiceWordsRole, ///< what a person calls them, in the same order
        TroubleRole,
        DepthRole,
        GivenRole,
        NeededRole
    };
    Q_ENUM(Role)
    /// Those of documents::FormField.
    enum Kind { Text, Number, Whole, Length, YesNo, Choice, List, Part, Items, Item };
    Q_ENUM(Kind)

    explicit DraftForm(QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(fields_.size()); }

    [[nodiscard]] bool stale() const { return stale_; }

    /// Another document, and how its reader writes lengths. A text that is no document makes the form stale.
    void show(const std::string& schemaFile, const QString& document, const Style& style,
              const Offers& offers = {});
    /// There is another text, which is not shown yet.
    void wait() { setStale(true); }
    /// Nobody asks any more for what could not be read.
    void dropUnread();
    /// What is wrong with the document, said at the fields it concerns.
    void setErrors(const std::vector<Error>& errors);

    /// The first field whose content is not in the document, and why; empty: everything is.
    [[nodiscard]] QString unread() const;

    /// What a person types into a field.
    Q_INVOKABLE void fill(int row, const QString& entered);
    /// Another of that list, or the part that is not there yet.
    Q_INVOKABLE void add(int row);
    Q_INVOKABLE void takeOut(int row);

signals:
    void countChanged();
    void staleChanged();
    void unreadChanged();
    /// The document as it says now.
    void written(const QString& document);

private:
    /// What is typed into a field that takes no such thing.
    struct Unread {
        QString entered;
        QString why;
    };

    /// Whether that field can be filled in now.
    [[nodiscard]] bool takes(int row) const { return !stale_ && row >= 0 && row < count(); }
    [[nodiscard]] QStringList choiceWords(const documents::FormField& field) const;
    /// Makes choices of the fields that something is offered for, with what stands there first.
    void offer(std::vector<documents::FormField>& fields) const;
    [[nodiscard]] QString valueOf(const documents::FormField& field) const;
    [[nodiscard]] QString troubleOf(const documents::FormField& field) const;
    [[nodiscard]] Result<std::string> filled(const documents::FormField& field, const QString& entered) const;
    void put(std::vector<documents::FormField> fields);
    void setStale(bool stale);
    /// Of the fields that `isMeant` says yes to.
    template <class IsMeant>
    void forget(const IsMeant& isMeant);
    void showAgain(int first, int last);

    std::string schemaFile_;
    std::string document_;
    Style style_;
    Offers offers_;
    std::vector<documents::FormField> fields_;
    bool stale_ = false;
    QHash<QString, Unread> unread_; ///< by pointer
    QHash<QString, QString> wrong_; ///< what the document's check says, by pointer
};

} // namespace lapwright::model
