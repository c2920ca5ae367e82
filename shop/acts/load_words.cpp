#include "acts/load_words.h"

#include "acts/words.h"

namespace lapwright::acts {

std::vector<std::string> loadInWords(const schedule::Load& load, const Style& style)
{
    std::vector<std::string> lines;
    for (const schedule::Bundle& bundle : load.bundles) {
        lines.push_back(bundle.label + "  " + bundle.job + (bundle.area.empty() ? "" : ", " + bundle.area) +
                        ", " + describe(bundle.material) + ", " + writeMass(bundle.kilograms, style) +
                        (bundle.twoPeople ? ", two people" : ""));
        for (const schedule::LoadedPiece& piece : bundle.pieces)
            lines.push_back("    [ ] " + std::to_string(piece.count) + " of " + piece.mark + ", " +
                            write(piece.length, style) + (piece.run.empty() ? "" : ", for run " + piece.run));
    }
    const schedule::LoadTotals all = schedule::totalsOf(load);
    lines.push_back(counted(all.bundles, "bundle") + ", " + counted(all.pieces, "piece") + ", " +
                    writeMass(all.kilograms, style) + ", longest " + write(all.longest, style));
    return lines;
}

} // namespace lapwright::acts
