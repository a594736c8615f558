#include "viewer/page/page_text.h"

#include <QString>

#include "geometry/coil/mark_rule.h"
#include "models/files/made_by.h"
#include "viewer/page/html.h"
#include "viewer/page/page_controls.h"
#include "viewer/sheet/date.h"
#include "viewer/stage/things/surroundings.h"
#include "viewer/words/data_words.h"
#include "viewer/words/find_again.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

std::string paragraph(const std::string& text, const char* look = "") {
  if (text.empty()) return "";
  return *look ? std::string("<p class=\"") + look + "\">" + text + "</p>\n" : "<p>" + text + "</p>\n";
}

/// What finds the treatment's two marks again, in figures to be read at arm's length.
std::string find_again_html(const geometry::Plan& plan) {
  const std::vector<TapeToRead> tapes = find_again(plan);
  if (tapes.empty()) return "";
  std::vector<std::string> marks, froms;
  for (const TapeToRead& tape : tapes) {
    if (marks.empty() || marks.back() != tape.mark) marks.push_back(tape.mark);
    if (marks.size() == 1) froms.push_back(tape.from);
  }
  std::string out = "<table id=\"find-again\"><caption>" +
                    html_words(Words::tr("To find the marks again: tape in %1 from", "cm or inches"),
                               {tape_unit_in_words()}) +
                    "</caption>\n<thead><tr><td></td>";
  for (const auto& mark : marks) out += "<th scope=\"col\">" + escaped(mark) + "</th>";
  out += "</tr></thead>\n<tbody>\n";
  for (std::size_t row = 0; row < froms.size(); ++row) {
    out += "<tr><th scope=\"row\">" + escaped(froms[row]) + "</th>";
    for (std::size_t column = 0; column < marks.size(); ++column)
      out += "<td>" + escaped(tape_number(tapes[column * froms.size() + row].mm)) + "</td>";
    out += "</tr>\n";
  }
  return out + "</tbody></table>\n";
}

std::string coil_html(const HeadOfPage& head) {
  const geometry::Case& c = head.file.the_case;
  const geometry::Placement& site = head.plan.treatment;
  std::string out = "<h2>" + html_words(Words::tr("Coil on the site")) + "</h2>\n<dl>\n";
  const auto row = [&](const std::string& name, const std::string& value) {
    out += "<div><dt>" + name + "</dt><dd>" + value + "</dd></div>\n";
  };
  row(html_words(Words::tr("Coil")), escaped(coil_text(c.coil.model.title)));
  row(html_words(Words::tr("Angle")), escaped(coil_angle(site.angle_deg)));
  row(html_words(Words::tr("Centre to front edge")), escaped(tape_length(c.coil.centre_to_edge_mm)));
  row(html_words(Words::tr("Edge mark drawn by")),
      html_words(Words::tr("%1 rule"), {words(in_words(c.treatment.drawn_by))}));
  row(html_words(Words::tr("Coil laid by")),
      html_words(Words::tr("%1 rule"), {words(in_words(c.coil.laid_by))}));
  return out + "</dl>\n<figure id=\"rules\"></figure>\n" +
         paragraph(
             html_words(Words::tr(
                 "Tape: so far along the skin from the pulse point. Drop: straight down the coil's axis past "
                 "its front edge. Nearest: the skin nearest to that edge. A flat coil on a round head has "
                 "three edge marks; use one rule at every visit.")),
             "quiet");
}

std::string list(const char* id, const std::vector<std::string>& items) {
  if (items.empty()) return "";
  std::string out = std::string("<ul id=\"") + id + "\">\n";
  for (const std::string& item : items) out += "<li>" + escaped(item) + "</li>\n";
  return out + "</ul>\n";
}

std::string scene_html(const PageDrawn& scene, std::size_t index, std::size_t count, Face face) {
  std::string out = "<section class=\"scene\" data-scene=\"" + std::to_string(index) + "\">\n";
  if (face == Face::class_room)
    out += paragraph(
        html_words(Words::tr("Step %1 of %2"), {std::to_string(index + 1), std::to_string(count)}), "quiet");
  out += "<h2>" + escaped(scene.scene.title) + "</h2>\n" + paragraph(escaped(scene.scene.text), "text");
  if (!scene.scene.why.empty())
    out += "<details class=\"why\"><summary>" + html_words(Words::tr("Why?")) + "</summary><p>" +
           escaped(scene.scene.why) + "</p></details>\n";
  return out + "</section>\n";
}

std::string panel_html(const HeadOfPage& head, const std::vector<PageDrawn>& scenes, Face face) {
  std::string out = "<div id=\"panel\">\n";
  if (face == Face::technician) out += find_again_html(head.plan) + next_mark_button();
  out += scene_buttons(scenes, face) + "<div id=\"scenes\">\n";
  for (std::size_t i = 0; i < scenes.size(); ++i) out += scene_html(scenes[i], i, scenes.size(), face);
  out += "</div>\n";
  if (face != Face::technician) out += step_buttons();
  if (face == Face::patient) return out + "</div>\n";
  if (head.for_kernel) out += move_coil_html();
  if (face == Face::technician) {
    out += coil_html(head);
    if (head.for_kernel) out += check_html(head.plan.treatment.mark.has_value());
    std::vector<std::string> warnings;
    for (const auto& warning : head.plan.warnings) warnings.push_back(words(warning));
    out += list("warnings", warnings);
  }
  out += "<h2 class=\"of-legend\">" + html_words(Words::tr("Legend")) + "</h2>\n<ul id=\"legend\"></ul>\n";
  return out + "</div>\n";
}

}  // namespace

std::string page_title(const HeadOfPage& head, Face face) {
  if (face == Face::patient) return words(Words::tr("What happens with the coil"));
  const std::string label =
      head.file.the_case.label.empty() ? words(Words::tr("Unnamed case")) : head.file.the_case.label;
  return label + " - Scalpmark";
}

std::string page_body(const HeadOfPage& head, const std::vector<PageDrawn>& scenes, Face face,
                      const std::string& licences) {
  std::string out =
      "<body class=\"" + std::string(name_of(face)) + "\">\n<p id=\"too-old\">" +
      html_words(Words::tr("If this line stays, this browser is too old to draw the head, or scripts are "
                           "switched off in it: open the page in a browser of 2023 or newer. What is "
                           "written here holds all the same.")) +
      "</p>\n<header>\n";
  if (face == Face::patient) {
    out += "<h1>" +
           html_words(shows_person_of(head) ? Words::tr("A picture of a head, made from a scan")
                                            : Words::tr("A drawing of a head, shaped by a tape measure")) +
           "</h1>\n";
  } else {
    out += "<h1>" +
           (head.file.the_case.label.empty() ? html_words(Words::tr("Unnamed case"))
                                             : escaped(head.file.the_case.label)) +
           "</h1>\n";
  }
  if (face != Face::patient || shows_person_of(head))
    out += paragraph(
        escaped(head.said + (face == Face::patient || head.how_far.empty() ? "" : " " + head.how_far)),
        "quiet");
  out += "</header>\n<main>\n" + stage_html(face) + panel_html(head, scenes, face) + "</main>\n";
  out += "<footer><p>" + escaped(caution_text() + " " + models::made_by() + ", " + date_today() + ".") +
         "</p>\n<details id=\"licences\"><summary>" +
         html_words(Words::tr("Licences of what is in this page")) + "</summary><pre>" + escaped(licences) +
         "</pre></details></footer>\n";
  if (face == Face::technician) out += next_mark_html();
  return out;
}

}  // namespace scalpmark::viewer
