#include "viewer/words/inch_words.h"

#include <catch2/catch.hpp>

#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

using namespace scalpmark::viewer;
using scalpmark::geometry::Message;
using scalpmark::geometry::number;

namespace {

struct InInches {
  InInches() { set_length_unit(LengthUnit::inch); }
  ~InInches() { set_length_unit(LengthUnit::centimetre); }
};

}  // namespace

// One inch is 25.4 mm (international yard and pound agreement, 1959).
TEST_CASE("what the kernel refuses and warns of is said in inches where those are chosen") {
  const Message tapes =
      Message::of("The %1 tape was entered as %2 cm, but the head measures %3 cm; check it.",
                  Message::of("nasion-inion"), number(36.2), number(35.56));
  const Message range =
      Message::of("The line is %3 mm; on a head it is %1 to %2 mm.", number(127), number(254), number(50.8));
  const Message box = Message::of("what stands out is %1 x %2 x %3 mm", 254, 508, 127);
  const Message little = Message::of("no corner was moved by more than %1 mm.", number(0.26, 2));
  const Message area = Message::of("over %1 cm\u00b2 and %2 degrees", 13, 10);
  const Message counted = Message::of("Closed %1 small holes, up to %2 mm around.", 3, number(25.4));
  CHECK(words(tapes) ==
        "The nasion-inion tape was entered as 36.2 cm, but the head measures 35.6 cm; check it.");
  const InInches chosen;
  CHECK(words(tapes) ==
        "The nasion-inion tape was entered as 14.25 in, but the head measures 14.00 in; check it.");
  CHECK(words(range) == "The line is 2.00 in; on a head it is 5.00 to 10.00 in.");
  CHECK(words(box) == "what stands out is 10.00 x 20.00 x 5.00 in");
  CHECK(words(little) == "no corner was moved by more than 0.010 in.");
  CHECK(words(area) == "over 2.0 in\u00b2 and 10 degrees");
  CHECK(words(counted) == "Closed 3 small holes, up to 1.00 in around.");
  // Within a sentence as well, and what is text already stays.
  CHECK(words(Message::of("%1: %2 cm", Message::of("%1 cm", number(2.54)), std::string("about 3"))) ==
        "1.00 in: about 3 cm");
  CHECK(whole_length(5) == "0.20 in");
}

TEST_CASE("an amount that a text of ours names is whole millimetres, or inches") {
  CHECK(whole_length(5) == "5 mm");
}
