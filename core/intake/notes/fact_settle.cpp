// What the facts say of one another, and what the figures told without a word fill in.
#include <algorithm>
#include <string_view>

#include "core/intake/notes/fact_told.h"
#include "core/intake/notes/facts.h"

namespace ledgerboard::intake {

namespace {

using Of = LooseFigure::Of;

class Settler {
    // Words beside a figure in a sentence that names things or work.
    static constexpr int kMany = 99;

  public:
    explicit Settler(ToldFacts facts) : facts_(std::move(facts)) {}

    std::vector<DraftFact> run() {
        fillShortYear(true);
        settleSums(facts_);
        fillDays();
        fillBegin();
        fillYear(kMany - 1);
        fillLateYear();
        fillYear(kMany);
        fillShortYear(false);
        fillOther("area_sqft", Of::Area);
        fillOther("bedrooms", Of::Beds);
        fillAllBedrooms();
        fillOther("baths", Of::Baths);
        std::vector<DraftFact> facts;
        facts.reserve(facts_.told.size());
        for (ToldFact& told : facts_.told) {
            facts.push_back(std::move(told.fact));
        }
        return facts;
    }

  private:
    // How long the work takes, where only a span is said.
    void fillDays() {
        constexpr int kNear = 1;
        if (facts_.has("duration_days")) {
            return;
        }
        for (const LooseFigure& figure : facts_.loose) {
            if (figure.of == Of::Days && facts_.farFromFacts(figure.at) <= kNear) {
                facts_.add("duration_days", figure, std::to_string(figure.value));
                return;
            }
        }
    }

    // A day later than that of the walk, said among the facts, is when work begins.
    void fillBegin() {
        constexpr int kNear = 2;
        if (facts_.has("begin")) {
            return;
        }
        std::string walked;
        for (const LooseFigure& figure : facts_.loose) {
            if (figure.of != Of::Date) {
                continue;
            }
            const bool heads =
                figure.at <= 2 && walked.empty() && facts_.farFromFacts(figure.at) > 0;
            if (heads) {
                walked = figure.text;
            } else if (figure.text > walked && facts_.farFromFacts(figure.at) <= kNear) {
                facts_.add("begin", figure, figure.text);
                return;
            }
        }
    }

    // "Eighty three.", where the notes open or close and no sum is meant by it.
    void fillShortYear(bool opening) {
        constexpr int kOpening = 3;
        constexpr int kMostWords = 1;
        constexpr std::int64_t kCentury = 1900;
        for (const LooseFigure& figure : facts_.loose) {
            const std::int64_t year = figure.value / kThousandDollars;
            const bool sum =
                std::any_of(facts_.told.begin(), facts_.told.end(), [&](const ToldFact& told) {
                    return told.sum == figure.value ||
                           (opening && told.sum > 0 && told.at == figure.at);
                });
            const bool told = opening ? figure.at <= kOpening && figure.words <= kMostWords + 1
                                      : figure.words <= kMostWords && facts_.isAmongFacts(figure);
            if (!facts_.has("built") && figure.round && !sum && within(year, 20, 99) && told) {
                facts_.add("built", figure, std::to_string(kCentury + year));
            }
        }
    }

    // A year by itself, told beside what the house cost or has.
    void fillLateYear() {
        for (const LooseFigure& figure : facts_.loose) {
            if (!facts_.has("built") && figure.of == Of::LateYear && facts_.isAmongFacts(figure)) {
                facts_.add("built", figure, std::to_string(figure.value));
            }
        }
    }

    // A year told where the notes open: one in a sentence that names things may be that of a thing.
    void fillYear(int mostWords) {
        for (const LooseFigure& figure : facts_.loose) {
            if (!facts_.has("built") && figure.of == Of::Year && figure.words <= mostWords) {
                facts_.add("built", figure, std::to_string(figure.value));
            }
        }
    }

    // The most that work was spoken of in, where no count of the house was told.
    void fillAllBedrooms() {
        const LooseFigure* most = nullptr;
        for (const LooseFigure& figure : facts_.loose) {
            if (figure.of == Of::AllBeds && (most == nullptr || figure.value > most->value)) {
                most = &figure;
            }
        }
        if (most != nullptr && !facts_.has("bedrooms")) {
            facts_.add("bedrooms", *most, most->text);
        }
    }

    void fillOther(const std::string& name, Of of) {
        for (const LooseFigure& figure : facts_.loose) {
            if (!facts_.has(name) && figure.of == of && facts_.isAmongFacts(figure)) {
                facts_.add(name, figure, figure.text);
            }
        }
    }

    ToldFacts facts_;
};

}  // namespace

std::vector<DraftFact> settledFacts(std::vector<ToldFact> told,
                                    const std::vector<LooseFigure>& loose, int last) {
    return Settler({std::move(told), loose, last}).run();
}

}  // namespace ledgerboard::intake
