#include "viewer/page/page_controls.h"

#include <array>
#include <utility>

#include "viewer/page/html.h"
#include "viewer/words/find_again.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

/// `name` is what a script knows it by; `about` is read out in place of a sign.
std::string button(const char* name, const std::string& text, const std::string& about = "") {
  return "<button type=\"button\" data-do=\"" + std::string(name) + "\"" +
         (about.empty() ? "" : " aria-label=\"" + about + "\" title=\"" + about + "\"") + ">" + text +
         "</button>";
}

std::string tape_fields(const char* mark, const QString& title) {
  const std::array<std::pair<const char*, QString>, 4> from{{{"vertex", Words::tr("vertex")},
                                                             {"nasion", Words::tr("nasion")},
                                                             {"left_tragus", Words::tr("left tragus")},
                                                             {"right_tragus", Words::tr("right tragus")}}};
  std::string out = "<fieldset><legend>" + html_words(title) + "</legend>\n";
  for (const auto& [name, text] : from)
    out += "<label>" + html_words(text) + " <input inputmode=\"decimal\" autocomplete=\"off\" data-mark=\"" +
           mark + "\" data-tape=\"" + name + "\"></label>\n";
  return out + "</fieldset>\n";
}

}  // namespace

bool shows_person_of(const HeadOfPage& head) {
  return head.file.head.kind != models::HeadKind::generic;
}

std::string stage_html(Face face) {
  std::string keys =
      words(Words::tr("The head. Arrow keys turn it, plus and minus bring it nearer and further."));
  if (face != Face::patient)
    keys += " " + words(Words::tr(
                      "With Shift, arrow keys move the coil by a millimetre; Page Up and Page Down turn "
                      "it by a degree, Escape puts it back."));
  std::string out = "<div id=\"stage\" tabindex=\"0\" role=\"application\" aria-label=\"" + escaped(keys) +
                    "\">\n<canvas id=\"picture\" aria-hidden=\"true\"></canvas><canvas id=\"names\" "
                    "aria-hidden=\"true\"></canvas>\n<p id=\"headline\" hidden></p><p id=\"way\"></p>\n"
                    "<canvas id=\"printed\" aria-hidden=\"true\"></canvas>\n</div>\n<div id=\"looks\">\n";
  out += button("left", html_words(Words::tr("Left"))) + button("front", html_words(Words::tr("Front"))) +
         button("right", html_words(Words::tr("Right"))) +
         button("back", html_words(Words::tr("Back", "a side of the head"))) +
         button("above", html_words(Words::tr("Above"))) +
         button("nearer", "+", html_words(Words::tr("Nearer"))) +
         button("further", "\u2212", html_words(Words::tr("Further"))) +
         button("as-first", html_words(Words::tr("As at first")));
  return out + "\n</div>\n";
}

std::string scene_buttons(const std::vector<PageDrawn>& scenes, Face face) {
  if (face != Face::technician) return "";
  std::string out =
      "<div id=\"tabs\" role=\"group\" aria-label=\"" + html_words(Words::tr("What is looked at")) + "\">\n";
  for (std::size_t i = 0; i < scenes.size(); ++i)
    out += "<button type=\"button\" data-scene=\"" + std::to_string(i) + "\" aria-pressed=\"false\">" +
           escaped(scenes[i].scene.title) + "</button>";
  return out + "\n</div>\n";
}

std::string step_buttons() {
  return "<div id=\"steps\">" + button("step-back", html_words(Words::tr("Back"))) +
         button("step-on", html_words(Words::tr("Next"))) + "</div>\n";
}

std::string next_mark_button() {
  return "<p>" + button("numbers", html_words(Words::tr("Show the numbers large, one at a time"))) + "</p>\n";
}

std::string next_mark_html() {
  return "<div id=\"next-mark\" role=\"dialog\" aria-modal=\"true\" aria-label=\"" +
         html_words(Words::tr("The numbers of the marks, one at a time")) +
         "\" hidden>\n<p id=\"next-what\"></p><p id=\"next-number\" aria-live=\"assertive\"></p><p "
         "id=\"next-progress\"></p>\n<div>" +
         button("next-back", html_words(Words::tr("Previous"))) +
         button("next-on", html_words(Words::tr("Next"))) +
         button("next-done", html_words(Words::tr("Done"))) + "</div>\n</div>\n";
}

std::string move_coil_html() {
  return "<section id=\"move-coil\">\n<h2>" + html_words(Words::tr("Move the coil")) +
         "</h2>\n<p class=\"quiet\">" +
         html_words(Words::tr(
             "Drag the coil over the head, or use the buttons. This changes nothing in the plan.")) +
         "</p>\n<div class=\"pad\">" +
         button("coil-forward", "\u2191", html_words(Words::tr("Coil a millimetre forward"))) +
         button("coil-backward", "\u2193", html_words(Words::tr("Coil a millimetre backward"))) +
         button("coil-inward", "\u2192\u007c",
                html_words(Words::tr("Coil a millimetre toward the midline"))) +
         button("coil-outward", "\u007c\u2190",
                html_words(Words::tr("Coil a millimetre away from the midline"))) +
         "</div>\n<label>" + html_words(Words::tr("Angle to the midline")) +
         " <input id=\"angle\" type=\"range\" min=\"-180\" max=\"180\" step=\"1\"><output "
         "id=\"angle-said\"></output></label>\n<dl id=\"live\" aria-live=\"polite\"></dl>\n<p>" +
         button("put-back", html_words(Words::tr("Put the coil back on the site"))) + "</p>\n</section>\n";
}

std::string check_html(bool has_edge_mark) {
  std::string out = "<section id=\"check\">\n<h2>" + html_words(Words::tr("Check today's marks")) + "</h2>\n";
  if (!has_edge_mark)
    return out + "<p>" +
           html_words(Words::tr(
               "The plan's edge mark falls off the head, so there is nothing to lay the coil over and "
               "nothing to check.")) +
           "</p>\n</section>\n";
  return out + "<p class=\"quiet\">" +
         html_words(
             Words::tr("Type what the tape reads from two or more points to each of today's marks, in %1."),
             {tape_unit_in_words()}) +
         "</p>\n<form id=\"tapes\">\n" + tape_fields("site", Words::tr("Site mark")) +
         tape_fields("edge", Words::tr("Edge mark")) + "<p>" +
         button("check", html_words(Words::tr("Check"))) +
         "</p>\n</form>\n<div id=\"verdict\" role=\"status\" aria-live=\"polite\"></div>\n</section>\n";
}

}  // namespace scalpmark::viewer
