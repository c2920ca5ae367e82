#pragma once

#include "documents/json_text.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <iterator>
#include <limits>
#include <random>
#include <string>
#include <vector>

/// Documents that somebody or something has changed.
namespace texts {

using lapwright::documents::Json;

/// Changes one thing somewhere in a document.
class Mutator {
public:
    explicit Mutator(unsigned seed) : random_(seed) {}

    void mutate(Json& root)
    {
        std::vector<Json*> places;
        collect(root, places);
        Json& place = *places[below(places.size())];
        switch (below(6)) {
        case 0:
            return remove(place);
        case 1:
            if (place.is_object()) {
                place["unheard of"] = value();
                return;
            }
            break;
        case 2:
            if (place.is_array() && !place.empty()) {
                place.push_back(place[below(place.size())]);
                return;
            }
            break;
        case 3:
            if (place.is_string() && !place.get_ref<std::string&>().empty()) {
                std::string& text = place.get_ref<std::string&>();
                text[below(text.size())] = static_cast<char>('!' + below(90));
                return;
            }
            break;
        case 4:
            if (place.is_number()) {
                place = place.get<double>() * 1.5 - 20.25;
                return;
            }
            break;
        default:
            break;
        }
        if (&place != &root)
            place = value();
    }

private:
    std::size_t below(std::size_t count)
    {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(random_);
    }

    static void collect(Json& place, std::vector<Json*>& places)
    {
        places.push_back(&place);
        if (place.is_structured())
            for (Json& inner : place)
                collect(inner, places);
    }
    void remove(Json& place)
    {
        if (!place.is_structured() || place.empty())
            return;
        auto entry = place.begin();
        std::advance(entry, static_cast<std::ptrdiff_t>(below(place.size())));
        place.erase(entry);
    }
    Json value()
    {
        switch (below(14)) {
        case 0:
            return nullptr;
        case 1:
            return true;
        case 2:
            return -1;
        case 3:
            return 0.5;
        case 4:
            return std::int64_t{1'000'000'000};
        case 5:
            return 1e300;
        case 6:
            return "";
        case 7:
            return std::string(5'000, 'x');
        case 8:
            return Json::array();
        case 9:
            return Json::object();
        case 10:
            return Json::array({Json::object({{"id", "a"}}), 3});
        case 11:
            return std::numeric_limits<std::uint64_t>::max();
        case 12:
            return "../../etc/passwd";
        default:
            return 12;
        }
    }

    std::mt19937 random_;
};

/// How often, where it is `usual` unless LAPWRIGHT_LONG is set.
inline std::size_t rounds(std::size_t usual)
{
    return std::getenv("LAPWRIGHT_LONG") != nullptr ? usual * 20 : usual;
}

} // namespace texts
