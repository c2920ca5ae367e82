#pragma once

#include "measure/result.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace lapwright {

/// Where translations lie inside a program: "lapwright_CODE.qm" for the core and the field app,
/// "shop_CODE.qm" for what only the shop says.
inline constexpr auto languageFolder = ":/lapwright/languages";

/// Speaks the language of this code ("en", "es") or of this .qm file, the system's if it is empty, English
/// where there is no translation, and writes numbers and dates as that language does where the machine is at
/// home. What is shown already is said anew by QQmlEngine::retranslate() and by whoever made the texts.
void speak(const QString& language);

/// What is wrong with what option --language of a program names; nothing where speak() knows what to do with
/// it: nothing, the code of a language, or a .qm file that can be read.
[[nodiscard]] std::optional<Error> whyNotSpoken(const QString& language);

/// Codes of the languages the program speaks: "en", "es".
[[nodiscard]] QStringList languages();
/// As the language calls itself: "Español"; its code where its translation does not say.
[[nodiscard]] QString ownNameOf(const QString& code);

} // namespace lapwright
