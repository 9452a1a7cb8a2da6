// The part of the reader that keeps where each thing was named, whether or not a rule made
// anything of it.
#include <algorithm>

#include "core/intake/notes/reader.h"
#include "core/intake/notes/space_names.h"

namespace ledgerboard::intake {

namespace {

// A bound on memory for hostile input.
constexpr std::size_t kMostMentions = 20'000;

// "Carport: roof's good.": a building beside the house has a roof of its own.
bool isOwnRoof(const Mention& mention, const Walk& walk) {
    const std::string& thing = tables().objects[mention.object].name;
    if (mention.places.size() != 1 || (thing != "roof" && thing != "flat roof")) {
        return false;
    }
    const std::string& place = mention.places.front();
    return place == "shed" ? walk.underHeading() : isOutbuilding(place);
}

}  // namespace

// How surely it is known where the thing is.
void Reader::addPlaceClues(Mention& mention) const {
    const std::vector<std::string>& here = walk_.current();
    static const ClueWords kSinceMove("since move");
    mention.clues.add(&kSinceMove, &sinceMoveWords(walk_.sinceMove()));
    if (walk_.underHeading()) {
        mention.clues.add("under heading");
    }
    if (here.empty()) {
        mention.clues.add("unplaced");
    } else if (mention.places != here) {
        mention.clues.add("elsewhere");
    }
}

// "Garage. Six smoke alarms.": where the rules put the thing in this sentence is where it is, as
// long as they put it nowhere that the words tell of.
void Reader::placeAsMade(std::size_t foundBefore, Mention& mention) const {
    std::vector<std::string> made;
    for (std::size_t i = std::min(foundBefore, found_.size()); i < found_.size(); ++i) {
        if (found_[i].object == mention.object) {
            made.push_back(found_[i].place);
        }
    }
    const bool told = std::any_of(made.begin(), made.end(), [&](const std::string& place) {
        return std::find(mention.places.begin(), mention.places.end(), place) !=
               mention.places.end();
    });
    if (!made.empty() && !told) {
        mention.places = std::move(made);
    }
}

// What was said last of the thing in one place holds in another.
void Reader::copyMention(std::uint32_t object, const std::string& from, const std::string& to,
                         const Source& source) {
    for (std::size_t i = mentions_.size(); i-- > 0 && mentions_.size() < kMostMentions;) {
        if (mentions_[i].object == object && contains(mentions_[i].places, from)) {
            Mention copy = mentions_[i];
            copy.places = {to};
            copy.item = {};
            copy.item.source = source;
            copy.explained = reading_.explained.size();
            mentions_.push_back(std::move(copy));
            return;
        }
    }
}

// What the sentence stands under.
void Reader::addHereClues(Mention& mention) const {
    if (section_.is == Section::Open) {
        mention.clues.add("section open");
    } else if (section_.is == Section::Keep) {
        mention.clues.add("section keep");
    }
    if (choice_.age == 0) {
        mention.clues.add("choice");
    }
    if (gutAge_ <= 2) {
        mention.clues.add("gut");
    }
    if (line_.allNew) {
        mention.clues.add("listnew");
    }
}

void Reader::noteMentions(const Sentence& sentence, const Spots& spots,
                          const std::vector<ObjectSpot>& heard, const Placed& placed,
                          std::size_t foundBefore) {
    const std::size_t first = mentions_.size();
    if (section_.is == Section::NotDoing) {
        clues_.read(sentence, spots, mentions_, first);
        return;
    }
    const Source source = {heard.empty() ? std::string() : written(sentence), sentence.line, 0};
    for (const ObjectSpot& object : heard) {
        if (object.span.begin < placed.from || mentions_.size() >= kMostMentions) {
            continue;
        }
        const auto kept = std::find_if(
            spots.objects.begin(), spots.objects.end(),
            [&](const ObjectSpot& one) { return one.span.begin == object.span.begin; });
        Said said;
        said.object = kept == spots.objects.end() ? object.object : kept->object;
        said.at = object.span.begin;
        said.spot = kept == spots.objects.end()
                        ? kNone
                        : static_cast<std::size_t>(kept - spots.objects.begin());
        Mention mention;
        mention.clues = Clues(options_.explain);
        mention.object = said.object;
        mention.begin = said.at;
        mention.explained = reading_.explained.size();
        const std::size_t known = walk_.known().size();
        mention.places = placesFor(spots, placed, said);
        placeAsMade(foundBefore, mention);
        mention.placed =
            isOwnRoof(mention, walk_) || (kept != spots.objects.end() && isPlaceItself(*kept));
        for (std::size_t i = known; i < walk_.known().size(); ++i) {
            unspoken_.insert(walk_.known()[i].key);
        }
        Found found;
        found.item.source = source;
        addAmounts(sentence, spots, said, found);
        mention.item = std::move(found.item);
        if (kept == spots.objects.end()) {
            mention.clues.add("dropped");
            mention.aside = true;
        } else {
            const auto flag = [&](bool is, std::string_view name) {
                if (is) {
                    mention.clues.add(name);
                }
            };
            mention.aside = kept->landmark;
            flag(kept->landmark, "landmark");
            flag(kept->with, "with");
            flag(kept->material, "material");
            flag(kept->verb, "verb");
            flag(kept->object != object.object, "renamed");
        }
        addPlaceClues(mention);
        addHereClues(mention);
        placeClues_.add(mentions_.size(), mention, heard, walk_);
        mentions_.push_back(std::move(mention));
    }
    clues_.read(sentence, spots, mentions_, first);
}

}  // namespace ledgerboard::intake
