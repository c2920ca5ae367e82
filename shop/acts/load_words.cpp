#include "acts/load_words.h"

#include "acts/words.h"

#include <QString>

namespace lapwright::acts {

std::vector<std::string> loadInWords(const schedule::Load& load, const Style& style)
{
    std::vector<std::string> lines;
    for (const schedule::Bundle& bundle : load.bundles) {
        lines.push_back(bundle.label + "  " + bundle.job + ", " + describe(bundle.material) + ", " +
                        QString::number(bundle.kilograms, 'f', 1).toStdString() + " kg" +
                        (bundle.twoPeople ? ", two people" : ""));
        for (const schedule::LoadedPiece& piece : bundle.pieces)
            lines.push_back("    [ ] " + std::to_string(piece.count) + " of " + piece.mark + ", " +
                            write(piece.length, style) + (piece.run.empty() ? "" : ", for run " + piece.run));
    }
    return lines;
}

} // namespace lapwright::acts
