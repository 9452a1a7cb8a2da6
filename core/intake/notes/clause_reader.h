// One reading of a sentence, clause by clause: the machine behind bondsOf.
//
// Holds where it stands in the present clause; events are taken in the order of the sentence.
// Threads: one sentence, one thread.
#pragma once

#include <vector>

#include "core/intake/notes/clause_events.h"
#include "core/intake/notes/clause_rules.h"
#include "core/intake/notes/clauses.h"

namespace ledgerboard::intake {

class ClauseReader : ClauseRules {
  public:
    ClauseReader(const Sentence& sentence, const Spots& spots, std::size_t from)
        : ClauseRules(sentence, spots), from_(from) {}

    [[nodiscard]] Bonds run();

  private:
    using Kind = ClauseEvent::Kind;
    using Event = ClauseEvent;

    // What has been heard of the present clause.
    struct State {
        std::vector<std::size_t> subject;  // things that stand before what is said of them
        bool said = false;                 // something was said of the subject
        bool pronoun = false;              // the subject is "it": the topic
        std::size_t open = kNone;          // treatment whose list is open
        std::vector<std::size_t> list;     // things it has taken
        std::vector<std::size_t> pending;  // things that may go on the list, or be a subject
        std::vector<std::size_t> topic;    // what was spoken of last
        bool parted = false;               // a comma or "and" since the last thing
        bool comma = false;                // a comma since the last thing
        std::size_t had = kNone;           // what the subject is said to have
        bool label = false;                // the subject is a label: "North wall: …"
    };

    void take(const Event& event);
    void enterBracket();
    [[nodiscard]] bool listGoesOn(std::size_t at) const;
    void takeWanted();
    bool takeSoIs();
    bool takeExcepted();
    void takeTurn();
    [[nodiscard]] bool isSaidOf(std::size_t thing) const;
    void endSubject();
    void takeThing(std::size_t thing);
    void takePronoun();
    [[nodiscard]] bool hasRight(std::size_t act) const;
    void takeAct(std::size_t act);
    bool takeAlong(std::size_t act);
    bool holdsThing(std::size_t act);
    void takeListed(std::size_t act);
    [[nodiscard]] bool onlyLeads(std::size_t act) const;
    bool takeInside(std::size_t act);
    void takeNone(std::size_t act);
    bool takeInner(std::size_t act);
    bool takeAttribute(std::size_t act);
    void openList(std::size_t act);
    void closeList();
    void takeLeft(std::size_t act);
    [[nodiscard]] bool ownInstead(std::size_t act) const;
    void splitPending();
    void takeNewOne(std::size_t act);
    [[nodiscard]] std::size_t labelThing() const;
    [[nodiscard]] bool isFloor(std::size_t thing) const;
    void bondAll(std::size_t act, const std::vector<std::size_t>& things, bool part = false);
    void bondTopic(std::size_t act, bool pronoun);

    std::size_t from_;
    std::vector<Event> events_;
    std::size_t next_ = 0;
    State now_;
    std::vector<State> outer_;
    std::vector<std::size_t> shared_;  // orders that wait for the next one's list
    std::vector<bool> commas_;         // by thing: a comma stands before it
    bool turned_ = false;
    Bonds bonds_;
};

}  // namespace ledgerboard::intake
