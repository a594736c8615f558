#include "viewer/practise/class_page.h"

#include <QBuffer>
#include <QByteArray>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/base/message.h"
#include "geometry/exercise/steadiness.h"
#include "models/files/own_files.h"
#include "models/files/safe_file.h"
#include "viewer/picture/picture.h"
#include "viewer/practise/class_chart.h"
#include "viewer/sheet/date.h"
#include "viewer/sheet/page.h"
#include "viewer/sheet/text_without_display.h"
#include "viewer/stage/things/surroundings.h"
#include "viewer/words/error.h"
#include "viewer/words/exercise_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;
using geometry::Message;

namespace {

constexpr std::array class_margins_mm{15.0, 10.0, 6.0};
constexpr double class_gap_mm = 3.5, beside_mm = 6;
constexpr int class_dots_per_inch = 600;
/// Printed some 108 mm wide: 250 dots to the inch; letters to be read on paper.
constexpr PictureSize class_printed{1040, 640};
constexpr double class_text_ratio = 1.6;

std::string quartile(double value) {
  return small_number(value);
}

std::string whole_degrees(double deg) {
  return geometry::to_text(geometry::number(deg, 0));
}

SheetTable step_table(const ClassResults& results) {
  SheetTable table;
  table.title = words(Words::tr("Step by step: each trainee's last attempt"));
  table.columns = {{words(Words::tr("Step")), 0.41},
                   {words(Words::tr("Done")), 0.06, true},
                   {words(Words::tr("Own error, %1: quarter", "%1 is mm or in"), {small_unit()}), 0.14, true},
                   {words(Words::tr("middle")), 0.08, true},
                   {words(Words::tr("three quarters")), 0.1, true},
                   {words(Words::tr("with what came before")), 0.12, true},
                   {words(Words::tr("angle, degrees")), 0.09, true}};
  for (const geometry::ClassStep& step : class_steps(last_attempts(results))) {
    table.bold.insert({table.rows.size(), 3});
    table.rows.push_back({words(step_name(step.step)), std::to_string(step.count), quartile(step.own_mm.low),
                          quartile(step.own_mm.median), quartile(step.own_mm.high),
                          quartile(step.off_mm.median),
                          step.own_deg ? whole_degrees(step.own_deg->median) : ""});
  }
  table.note = words(
      Words::tr("Own error: from where the step should be given what came before, so that an error is paid "
                "for once. Half of the trainees lie between a quarter and three quarters."));
  return table;
}

/// How far off the pulses are, in words.
Message pulses_of_class(const ClassResults& results) {
  std::vector<double> off;
  for (const geometry::Score& score : last_attempts(results))
    if (score.pulse) off.push_back(score.pulse->off.mm);
  if (off.empty()) return Message::of("No attempt leads to a pulse.");
  const geometry::Quartiles q = geometry::quartiles(off);
  return Message::of(
      "Pulse at the end, of %1: half within %2; a quarter within %3, three quarters within %4.", off.size(),
      small_length(q.median), small_length(q.low), small_length(q.high));
}

std::vector<Message> said_of_class(const ClassResults& results,
                                   const std::shared_ptr<const geometry::Tolerance>& hands) {
  std::vector<Message> all{pulses_of_class(results), trained_pulse()};
  if (hands) all.push_back(hands_sentence(*hands));
  for (const geometry::Task task : {geometry::Task::vertex, geometry::Task::hotspot})
    if (has_task(results.setup.exercise, task))
      if (const auto said = trained_people({task, 0})) all.push_back(*said);
  return all;
}

void class_heading(Pages& pages, const ClassResults& results) {
  const double wide = pages.width_mm();
  pages.text(Words::tr("Class page"), 0, 0, wide * 0.6, {16, true, false, false});
  pages.text(printable(date_today()), wide * 0.6, 1.6, wide * 0.4, {10.5, false, false, true});
  double y = 8.5;
  const geometry::Exercise& exercise = results.setup.exercise;
  if (!exercise.title.empty())
    y += pages.line_of_text(printable(exercise.title), 0, y, wide, {11, true, false, false}) + 1;
  const bool left = results.setup.the_case.side == geometry::Side::left;
  const std::string side = words(left ? Words::tr("left side") : Words::tr("right side"));
  const std::string head = exercise.drawn_head ? words(Words::tr("head drawn for the number %1"),
                                                       {std::to_string(exercise.number)})
                                               : words(Words::tr("the case's own head"));
  const std::string who = results.trainees.size() == 1
                              ? words(Words::tr("1 trainee"))
                              : words(Words::tr("%1 trainees"), {std::to_string(results.trainees.size())});
  const std::string missing =
      results.left_out.empty()
          ? ""
          : " " + words(Words::tr("Files left out: %1."), {std::to_string(results.left_out.size())});
  y += pages.text(printable(who + ", " + head + ", " + side + "." + missing), 0, y, wide, {}) + 0.5;
  y += pages.text(printable(words(not_a_certificate())), 0, y, wide, {9, true, false, false});
  pages.go_to(y + class_gap_mm);
}

constexpr double words_below_mm = 9;     // of picture and chart, two or three lines
constexpr double least_picture_mm = 40;  // what is said less, the last first, rather than a smaller picture

/// How high picture and chart can be, between the heading and `then_mm` below what is said.
double room_for_picture(const Pages& pages, const std::vector<Message>& said, double then_mm) {
  double room = pages.left_mm() - then_mm - class_gap_mm - 1.5 - words_below_mm;
  for (const Message& one : said)
    room -= pages.text_height_mm(printable(words(one)), pages.width_mm(), {}) + 0.6;
  return room;
}

/// The head beside what is seen of it from close by, and what is said of both below. As large as the page is
/// wide, or as leaves room for the table.
void picture_and_words(Pages& pages, const ClassResults& results, const SheetView& picture,
                       const std::shared_ptr<const geometry::Tolerance>& hands, SheetTable& then) {
  constexpr Pages::Style quiet{9, false, true, false};
  constexpr std::size_t always_said = 2;
  const double wide = pages.width_mm(), top = pages.y_mm();
  const double shape = static_cast<double>(picture.width) / picture.height;
  std::vector<Message> said = said_of_class(results, hands);
  const auto room = [&] { return room_for_picture(pages, said, pages.table_height_mm(then, wide)); };
  while (room() < least_picture_mm && said.size() > always_said) said.pop_back();
  if (room() < least_picture_mm) then.note.clear();
  const double high = std::max(1.0, std::min((wide - beside_mm) / (1 + shape), room()));
  const double across = high * shape;
  const QImage image = QImage(reinterpret_cast<const uchar*>(picture.rgb.data()), picture.width,
                              picture.height, 3 * picture.width, QImage::Format_RGB888)
                           .copy();
  pages.image(image, 0, top, across, high);
  // Words below have the whole width, however small the picture.
  const double chart_at = across + beside_mm;
  const double below = pages.text(printable(picture.caption), 0, top + high + 0.5,
                                  std::max(across, wide / 2 - beside_mm), quiet);
  const double chart = draw_class_chart(pages, results, hands.get(), std::max(chart_at, wide / 2), top, high);
  double y = top + std::max(high + 0.5 + below, chart) + 1.5;
  for (const Message& one : said) y += pages.text(printable(words(one)), 0, y, wide, {}) + 0.6;
  pages.go_to(y + class_gap_mm - 0.6);
}

/// As many as there is room for; how many there are stands in the heading.
void what_was_left_out(Pages& pages, const std::vector<Message>& left_out) {
  constexpr Pages::Style quiet{9, false, true, false};
  for (const Message& file : left_out) {
    const QString text = printable(words(file));
    if (pages.text_height_mm(text, pages.width_mm(), quiet) > pages.left_mm()) return;
    pages.move_down(pages.text(text, 0, pages.y_mm(), pages.width_mm(), quiet) + 0.5);
  }
}

/// Returns the number of pages.
int draw_class_page(const ClassResults& results, const SheetView& picture,
                    const std::shared_ptr<const geometry::Tolerance>& hands, QPagedPaintDevice& onto) {
  Pages pages(onto, caution_text(), 1);
  class_heading(pages, results);
  SheetTable table = step_table(results);
  picture_and_words(pages, results, picture, hands, table);
  pages.need(pages.table_height_mm(table, pages.width_mm()));
  pages.move_down(pages.table(table, 0, pages.y_mm(), pages.width_mm()) + class_gap_mm);
  if (pages.count() == 1) what_was_left_out(pages, results.left_out);
  pages.finish();
  return pages.count();
}

}  // namespace

Shown class_shown(const ClassResults& results, const std::shared_ptr<const geometry::Tolerance>& hands) {
  using enum Thing;
  Shown shown;
  shown.things = {skin, treatment, labels};
  shown.brief = true;
  if (hands) {
    // Its own trials would pass for the trainees'.
    auto outlines = std::make_shared<geometry::Tolerance>(*hands);
    outlines->pulses.clear();
    shown.tolerance = std::move(outlines);
    shown.things.insert(tolerance);
  }
  for (const geometry::Score& score : last_attempts(results)) {
    if (!score.pulse) continue;
    Note note;
    note.shape = Shape::small_disc;
    note.role = Role::pulse;
    note.at = score.pulse->real;
    note.along = results.answers->plan.treatment.front;
    shown.notes.push_back(std::move(note));
  }
  return shown;
}

Gaze class_gaze(const ClassResults& results) {
  const geometry::HeadAxes& axes = results.answers->plan.axes;
  const geometry::Placement& treatment = results.answers->plan.treatment;
  // Along the skin's own direction at the site, so that distances there are seen as they are.
  const Vector3d way = treatment.normal;
  const Vector3d up = axes.up - axes.up.dot(way) * way;
  return {way, up.norm() > 0.1 ? Vector3d(up.normalized()) : treatment.forward};
}

SheetView class_picture(const ClassResults& results,
                        const std::shared_ptr<const geometry::Tolerance>& hands) {
  const Display display;
  Picture picture(display, class_printed);
  picture.stage().set_pixel_ratio(class_text_ratio * Picture::pixel_ratio());
  Shown shown = class_shown(results, hands);
  shown.caution = false;  // the page says it in print
  const geometry::RightAnswers& answers = *results.answers;
  picture.stage().show(answers.head, answers.the_case, answers.plan, shown);
  picture.stage().look(class_gaze(results));
  return {words(Words::tr("Each disc: where one trainee's pulse goes. Diamond: where it was wanted.")),
          class_printed.width, class_printed.height, picture.draw()};
}

std::string class_pdf(const ClassResults& results, const SheetView& picture,
                      const std::shared_ptr<const geometry::Tolerance>& hands, Paper paper) {
  const TextWithoutDisplay text;
  // A long table takes of the margin rather than a second page.
  for (const double margin : class_margins_mm) {
    QByteArray bytes;
    QBuffer out(&bytes);
    out.open(QIODevice::WriteOnly);
    int pages = 0;
    {
      QPdfWriter writer(&out);
      writer.setPageSize(QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
      writer.setPageMargins(QMarginsF(margin, margin, margin, margin), QPageLayout::Millimeter);
      writer.setResolution(class_dots_per_inch);
      writer.setTitle(Words::tr("Class page"));
      writer.setCreator(models::own_name);
      pages = draw_class_page(results, picture, hands, writer);
    }
    if (pages == 1 && !bytes.isEmpty()) return bytes.toStdString();
  }
  throw ViewerError(Message::of("The class page does not fit on one page; choose larger paper."));
}

void write_class_page(const std::filesystem::path& file, const ClassResults& results, Paper paper) {
  const auto hands = hands_here(*results.answers);
  const SheetView picture = class_picture(results, hands);
  models::write_whole(file, class_pdf(results, picture, hands, paper));
}

}  // namespace scalpmark::viewer
