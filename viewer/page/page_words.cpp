#include "viewer/page/page_words.h"

#include <utility>

#include "viewer/words/in_hand_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using nlohmann::ordered_json;

namespace {

ordered_json by_name(const std::vector<std::pair<const char*, QString>>& texts) {
  ordered_json out;
  for (const auto& [name, text] : texts) out[name] = text.toStdString();
  return out;
}

/// What every face says: how to look around.
ordered_json for_all() {
  return by_name(
      {{"from", Words::tr("from %1")},
       {"from_two", Words::tr("from %1 and %2")},
       {"from_three", Words::tr("from %1, %2 and %3")},
       {"above", Words::tr("above")},
       {"below", Words::tr("below")},
       {"the_front", Words::tr("the front")},
       {"the_back", Words::tr("the back")},
       {"the_right", Words::tr("the patient's right")},
       {"the_left", Words::tr("the patient's left")},
       {"no_drawing", Words::tr("This browser cannot draw the head (it has no WebGL 2). What is written "
                                "here holds all the same.")},
       {"page_of", Words::tr("%1 of %2")}});
}

void add_for_the_coil(ordered_json& out) {
  out.update(
      by_name({{"in_hand", QString::fromStdString(in_hand_headline())},
               {"from_the_site", Words::tr("pulse %1 from the site")},
               {"forward", Words::tr("%1 forward of it")},
               {"backward", Words::tr("%1 behind it")},
               {"inward", Words::tr("%1 toward the midline")},
               {"outward", Words::tr("%1 away from the midline")},
               {"to_midline", Words::tr("%1 to the midline", "an angle")},
               {"away_from_midline", Words::tr("%1 away from the midline", "an angle")},
               {"tape", Words::tr("tape")},
               {"drop", Words::tr("drop")},
               {"nearest", Words::tr("nearest")},
               {"edge_mark", Words::tr("Edge mark, edge %1 above it")},
               {"rule_gap",
                Words::tr("%1: edge %2 above its mark", "a rule, and how far its mark lies from the edge")},
               {"gap", Words::tr("gap %1")},
               {"coil", Words::tr("coil")},
               {"pulse", Words::tr("pulse")},
               {"vertex", Words::tr("vertex")},
               {"nasion", Words::tr("nasion")},
               {"left_tragus", Words::tr("left tragus")},
               {"right_tragus", Words::tr("right tragus")},
               {"edge_mark_in_short", Words::tr("edge mark")},
               {"tape_from",
                QString::fromStdString(words(Words::tr("tape, %1, from", "cm or inches"), {tape_unit()}))},
               {"none", Words::tr("none", "no edge mark")},
               {"off_the_head", Words::tr("The coil cannot lie there; it stays where it last could.")},
               {"put_back", Words::tr("The coil is back where the plan has it.")},
               {"getting_ready", Words::tr("getting ready\u2026")},
               {"no_kernel",
                Words::tr("The coil cannot be moved in this browser (%1). What is written here holds all the "
                          "same.")},
               {"tapes_coming", Words::tr("Tape distances are being worked out\u2026")}}));
}

void add_for_checking(ordered_json& out) {
  out.update(by_name(
      {{"agrees", Words::tr("Agrees")},
       {"move", Words::tr("Move")},
       {"unsure", Words::tr("Unsure")},
       {"vague",
        Words::tr("The tapes meet at so flat an angle that the mark may lie up to %1 off; measure one more "
                  "tape to it.")},
       {"several_site",
        Words::tr("Several places fit the site mark's tapes: choose one, or measure one more tape.")},
       {"several_edge",
        Words::tr("Several places fit the edge mark's tapes: choose one, or measure one more tape.")},
       {"place", Words::tr("Place %1, %2 from the wanted one", "A, B; a length")},
       {"two_tapes", Words::tr("Type two or more tapes of each mark.")},
       {"not_a_length", Words::tr("%1 is no length: type it as read from the tape, such as %2.")},
       {"checking", Words::tr("Looking for the marks\u2026")},
       {"todays_site", Words::tr("today's site mark")},
       {"todays_edge", Words::tr("today's edge mark")},
       {"todays_pulse", Words::tr("today's pulse")},
       {"next_of", Words::tr("%1, from %2", "a mark, and where the tape begins")}}));
}

}  // namespace

ordered_json page_words(Face face) {
  ordered_json out = for_all();
  if (face != Face::patient) add_for_the_coil(out);
  if (face == Face::technician) add_for_checking(out);
  return out;
}

ordered_json length_formats() {
  const bool inches = length_unit() == LengthUnit::inch;
  const std::string pattern = words(inches ? Words::tr("%1 in", "inches") : Words::tr("%1 cm")),
                    small = words(inches ? Words::tr("%1 in", "inches") : Words::tr("%1 mm"));
  const double mm_per_inch = 25.4;
  return {{"tape",
           {{"mm", inches ? mm_per_inch : 10.0},
            {"decimals", inches ? 2 : 1},
            {"mark", decimal_mark()},
            {"pattern", pattern}}},
          {"small",
           {{"mm", inches ? mm_per_inch : 1.0},
            {"decimals", inches ? 2 : 1},
            {"mark", decimal_mark()},
            {"pattern", small}}}};
}

ordered_json translated_patterns(const std::vector<std::string>& patterns) {
  ordered_json out = ordered_json::object();
  for (const std::string& pattern : patterns) {
    const std::string translated = QCoreApplication::translate("Message", pattern.c_str()).toStdString();
    if (translated != pattern) out[pattern] = translated;
  }
  return out;
}

}  // namespace scalpmark::viewer
