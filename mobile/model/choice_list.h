#pragma once

#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace lapwright::field {

struct Choice {
    QString key;
    QString words;
    QString detail;
    bool chosen = false;

    friend bool operator==(const Choice&, const Choice&) = default;
};

/// A few things to choose from, as a list for a screen.
class ChoiceList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    enum Role { KeyRole = Qt::UserRole + 1, WordsRole, DetailRole, ChosenRole };
    Q_ENUM(Role)

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(choices_.size()); }

    /// What there is to choose from now. Rows stay where their keys stay.
    void show(std::vector<Choice> choices);
    [[nodiscard]] const std::vector<Choice>& choices() const { return choices_; }

signals:
    void countChanged();

private:
    std::vector<Choice> choices_;
};

} // namespace lapwright::field
