#pragma once

#include "draft_form.h"
#include "drawing/display_list.h"
#include "measure/result.h"
#include "picture.h"
#include "storage/library.h"

#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace lapwright::model {

class Shop;

/// A document of the shop's reference data while a person changes it: checked and drawn with every change,
/// and kept only when it holds.
class LibraryDraft : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by its desk")
    Q_PROPERTY(bool open READ open NOTIFY opened FINAL)
    Q_PROPERTY(QString title READ title NOTIFY opened FINAL)
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY textChanged FINAL)
    /// The same as fields to fill in.
    Q_PROPERTY(lapwright::model::DraftForm* form READ form CONSTANT FINAL)
    /// What is wrong with it, what a field does not take first; empty: it holds.
    Q_PROPERTY(QString trouble READ trouble NOTIFY judged FINAL)
    /// What it draws; the last that held where it does not.
    Q_PROPERTY(lapwright::look::Picture picture READ picture NOTIFY judged FINAL)

public:
    enum class Kind { Machine, Trim, Rules, Floor, Rates };
    Q_ENUM(Kind)

    explicit LibraryDraft(Shop& shop);

    [[nodiscard]] bool open() const { return open_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString text() const { return text_; }
    void setText(const QString& text);
    [[nodiscard]] DraftForm* form() { return &form_; }
    [[nodiscard]] QString trouble() const;
    [[nodiscard]] look::Picture picture() const { return picture_; }

    /// What a person changes from now on.
    void begin(Kind kind, const QString& title, const QString& text);
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
    void judge();
    void showForm();
    [[nodiscard]] Result<drawing::DisplayList> drawn() const;
    [[nodiscard]] Result<bool> save() const;
    /// Keeps a document of the database, if it was read.
    template <class Document, class Write, class Save>
    [[nodiscard]] Result<bool> saveRead(const Result<Document>& read, const Write& write,
                                        const Save& save) const;

    Shop& shop_;
    bool open_ = false;
    Kind kind_ = Kind::Machine;
    QString title_;
    QString text_;
    QString trouble_; ///< with the text
    look::Picture picture_;
    DraftForm form_;
    QTimer pause_; ///< between the last key and the judgement
};

/// Where the shop's library keeps documents of that kind; nothing for the floor and the rates, which the
/// database keeps.
[[nodiscard]] std::optional<storage::LibraryKind> libraryKind(LibraryDraft::Kind kind);

} // namespace lapwright::model
