#pragma once

#include "documents/form.h"
#include "measure/result.h"
#include "measure/writing.h"

#include <QAbstractListModel>
#include <QHash>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <string>
#include <vector>

namespace lapwright::model {

/// A document of the reference data as fields to fill in, as its schema describes it. Each change is written
/// into the document at once; what cannot be read stays in its field and says why.
class DraftForm : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by its draft")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    enum Role {
        KindRole = Qt::UserRole + 1, ///< a documents::FormField::Kind
        LabelRole,
        HelpRole,
        ValueRole,
        UnitRole,
        ChoicesRole,
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

    /// Another document, and how its reader writes lengths. A text that is no document leaves the form as it
    /// is.
    void show(const std::string& schemaFile, const QString& document, const Style& style);
    /// Nobody asks any more for what could not be read.
    void dropUnread();
    /// What is wrong with the document, said at the fields it concerns.
    void setErrors(const std::vector<Error>& errors);

    /// Why what stands in a field is not in the document; empty: everything is.
    [[nodiscard]] QString unread() const;

    /// What a person types into a field.
    Q_INVOKABLE void fill(int row, const QString& entered);
    /// Another of that list, or the part that is not there yet.
    Q_INVOKABLE void add(int row);
    Q_INVOKABLE void takeOut(int row);

signals:
    void countChanged();
    /// The document as it says now.
    void written(const QString& document);

private:
    [[nodiscard]] bool holds(int row) const { return row >= 0 && row < count(); }
    [[nodiscard]] QString valueOf(const documents::FormField& field) const;
    [[nodiscard]] QString troubleOf(const documents::FormField& field) const;
    [[nodiscard]] Result<std::string> filled(const documents::FormField& field, const QString& entered) const;
    void put(std::vector<documents::FormField> fields);

    std::string schemaFile_;
    std::string document_;
    Style style_;
    std::vector<documents::FormField> fields_;
    QHash<QString, QString> unread_; ///< why what is typed cannot be read, by pointer
    QHash<QString, QString> wrong_;  ///< what the document's check says, by pointer
};

} // namespace lapwright::model
