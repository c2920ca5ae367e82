#pragma once

#include "draft_form.h"
#include "drawing/display_list.h"
#include "measure/result.h"
#include "picture.h"

#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <string>
#include <vector>

namespace lapwright::model {

class Shop;

/// What a draft is about.
struct DraftSubject {
    QString title;
    std::string schemaFile; ///< of its fields: "machine.schema.json"
    /// What its text draws, nothing where it has no picture. Errors: why it does not hold.
    std::function<Result<drawing::DisplayList>(const std::string& text)> draw;
    /// Keeps it for every station. Errors: why that cannot be.
    std::function<std::vector<Error>(const std::string& text)> save;
    /// What its fields offer beside what the schema says; may be missing.
    std::function<Offers(const std::string& text)> offers;
};

/// A document while a person changes it: checked and drawn with every change, and kept only when it holds.
class Draft : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by its desk")
    Q_PROPERTY(bool open READ open NOTIFY opened FINAL)
    Q_PROPERTY(QString title READ title NOTIFY opened FINAL)
    /// What is typed here reaches the fields after a pause.
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY textChanged FINAL)
    /// The same as fields to fill in.
    Q_PROPERTY(lapwright::model::DraftForm* form READ form CONSTANT FINAL)
    /// What is wrong with it, what a field does not take first; empty: it holds.
    Q_PROPERTY(QString trouble READ trouble NOTIFY judged FINAL)
    /// What it draws; the last that held where it does not.
    Q_PROPERTY(lapwright::look::Picture picture READ picture NOTIFY judged FINAL)

public:
    explicit Draft(Shop& shop);

    [[nodiscard]] bool open() const { return open_; }
    [[nodiscard]] QString title() const { return subject_.title; }
    [[nodiscard]] QString text() const { return text_; }
    void setText(const QString& text);
    [[nodiscard]] DraftForm* form() { return &form_; }
    [[nodiscard]] QString trouble() const;
    [[nodiscard]] look::Picture picture() const { return picture_; }

    /// What a person changes from now on.
    void begin(DraftSubject subject, const QString& text);
    /// Shows and judges what was typed without waiting for a pause.
    Q_INVOKABLE void settle();
    /// Keeps it for every station that reads this library or database. False where it does not hold or could
    /// not be written: that is told, and it stays open.
    Q_INVOKABLE bool keep();
    /// Leaves things as they were.
    Q_INVOKABLE void leave();

signals:
    void opened();
    void textChanged();
    void judged();
    void kept();

private:
    /// From its fields, which say the same already.
    void take(const QString& text);
    void showForm();
    void judge();

    Shop& shop_;
    bool open_ = false;
    DraftSubject subject_;
    QString text_;
    QString trouble_; ///< with the text
    look::Picture picture_;
    DraftForm form_;
    QTimer pause_; ///< between the last key and the judgement
};

} // namespace lapwright::model
