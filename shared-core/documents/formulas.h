#pragma once

#include "documents/codec.h"
#include "measure/derivation.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

/// How an order keeps where its numbers come from. The words of a derivation are the same for thousands of
/// numbers, so they stand once, in the order's list of formulas; each number then says which formula, with
/// which values, and because of what.
namespace lapwright::documents {

/// The member of an order that lists them.
inline constexpr const char* formulasMember = "formulas";

/// What a derivation says apart from its values.
struct Formula {
    /// What kind of value a name stands for; in the sequence of Phrase::Value.
    enum class Type { Text, Length, Angle, Slope, Count, Number, Mass };
    struct Name {
        std::string name;
        Type type = Type::Text;

        friend bool operator==(const Name&, const Name&) = default;
    };

    std::string text;
    std::string source;
    std::vector<Name> values;

    friend bool operator==(const Formula&, const Formula&) = default;
};

/// The formulas of an order that is being read.
class FormulaReader {
public:
    /// Characters of all derivations of one order written out; only a hostile order has more.
    static constexpr std::size_t usualWords = std::size_t{1} << 30;

    /// Takes the list from an order's members; nothing said of formulas is an empty list.
    FormulaReader(const Json& members, Errors& errors, std::size_t mostWords = usualWords);

    /// {"formula": 3, "values": [3810, "E1"], "because": [...]} with its words put in. Errors: a formula or a
    /// number of values that is not there; a value of another type; derivations that would say more than
    /// `mostWords` together.
    void derivation(const Json& json, Derivation& derivation, Reading& reading);

private:
    void values(const Json& json, const Formula& formula, Phrase& statement, Reading& reading) const;

    std::vector<Formula> formulas_;
    std::size_t words_ = 0;
    std::size_t mostWords_;
};

/// The formulas of an order that is being written, in the sequence they come up.
class FormulaBook {
public:
    FormulaBook() = default;
    /// Begins with a list of formulas as it was read, so that each keeps its place and what else it says.
    explicit FormulaBook(Json known);

    /// Writes the derivation and enters its formulas.
    void put(const Derivation& derivation, Writing& out);
    /// The list of formulas as canonical text.
    [[nodiscard]] std::string written() const;

private:
    [[nodiscard]] std::size_t placeOf(const Derivation& derivation);

    Json known_ = Json::array();
    std::vector<Formula> formulas_;
    std::map<std::string, std::size_t> places_;
    std::string key_;
};

/// Needs Reading::formulas and Writing::formulas.
template <>
struct Custom<Derivation> {
    static void get(const Json& json, Derivation& derivation, Reading& reading);
    static void put(const Derivation& derivation, Writing& out);
};

} // namespace lapwright::documents
