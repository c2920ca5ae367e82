#include "draft.h"

#include "shop.h"
#include "text.h"

#include <utility>

namespace lapwright::model {

namespace {

/// Milliseconds without a key before what is written is judged: half a number is no mistake.
constexpr int pauseOfTyping = 300;

} // namespace

Draft::Draft(Shop& shop) : QObject(&shop), shop_(shop)
{
    pause_.setSingleShot(true);
    pause_.setInterval(pauseOfTyping);
    connect(&pause_, &QTimer::timeout, this, [this] {
        showForm();
        judge();
    });
    connect(&form_, &DraftForm::written, this, &Draft::take);
    connect(&form_, &DraftForm::unreadChanged, this, &Draft::judged);
    connect(shop.preferences(), &Preferences::changed, this, [this] {
        if (open_)
            showForm(); // perhaps in other units
    });
}

QString Draft::trouble() const
{
    QStringList lines = {form_.unread(), trouble_};
    lines.removeAll(QString());
    return lines.join(u'\n');
}

void Draft::begin(DraftSubject subject, const QString& text)
{
    open_ = true;
    subject_ = std::move(subject);
    text_ = text;
    picture_ = look::Picture();
    showForm();
    judge();
    emit opened();
    emit textChanged();
}

void Draft::setText(const QString& text)
{
    if (text == text_)
        return;
    text_ = text;
    form_.wait();
    pause_.start();
    emit textChanged();
}

void Draft::take(const QString& text)
{
    text_ = text;
    showForm();
    pause_.start();
    emit textChanged();
}

void Draft::settle()
{
    if (!pause_.isActive())
        return;
    pause_.stop();
    showForm();
    judge();
}

void Draft::showForm()
{
    const Offers offers = subject_.offers ? subject_.offers(text_.toStdString()) : Offers();
    form_.show(subject_.schemaFile, text_, shop_.style(), offers);
}

void Draft::judge()
{
    const auto made = subject_.draw(text_.toStdString());
    trouble_ = made.ok() ? QString() : shown(made.errors());
    form_.setErrors(made.ok() ? std::vector<Error>() : made.errors());
    if (made.ok())
        picture_ = made->shapes.empty() ? look::Picture() : look::Picture(*made);
    emit judged();
}

bool Draft::keep()
{
    if (!open_ || !shop_.letsPlan())
        return false;
    settle();
    if (const QString unread = form_.unread(); !unread.isEmpty()) {
        shop_.tellTrouble(unread);
        return false;
    }
    bool saved = false;
    shop_.act([&] {
        const std::vector<Error> errors = subject_.save(text_.toStdString());
        if (!errors.empty())
            return shop_.tellTrouble(errors);
        saved = true;
        shop_.tell(tr("%1 is kept as it stands now").arg(title()));
    });
    if (saved) {
        leave();
        emit kept();
    }
    return saved;
}

void Draft::leave()
{
    pause_.stop();
    open_ = false;
    text_.clear();
    trouble_.clear();
    picture_ = look::Picture();
    form_.dropUnread(); // its fields stay until the next document: a screen may still show them
    emit opened();
    emit textChanged();
    emit judged();
}

} // namespace lapwright::model
