// What are the lines of the notes once time stamps, speakers' names and bullets are taken off?
#pragma once

#include <string_view>
#include <vector>

namespace ledgerboard::intake {

struct NoteLine {
    std::string_view text;  // without stamp, speaker, bullet, heading marks and outer white space
    int number = 0;         // 1 is the first line of the notes
    int indent = 0;         // columns before the text or its bullet
    bool opens = false;     // a new sentence must begin here
    bool bullet = false;
    bool ticked = false;    // "[x] sink": done, in a list of boxes
    bool spoken = false;    // a speaker's name stood before it
    bool heading = false;   // marked as one: "## Kitchen", "**Kitchen**", underlined
    bool labelled = false;  // "BR2 - carpet", in notes whose lines open so
    bool marked = false;    // "b1 - carpet", in notes whose lines open with a word and a mark
    bool afterBlank = false;
    bool unlabelled = false;  // after a blank line in such notes, and without a label
};

// The lines that say something, in order. Blank lines, stamps alone and rules are left out.
[[nodiscard]] std::vector<NoteLine> noteLines(std::string_view notes);

}  // namespace ledgerboard::intake
