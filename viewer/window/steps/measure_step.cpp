#include "viewer/window/steps/measure_step.h"

#include <array>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/base/ranges.h"
#include "viewer/window/session/tapes_beside.h"
#include "viewer/words/cap_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using viewer::Thing;
using viewer::View;

MeasureStep::MeasureStep(Session& session, QWidget* parent)
    : Step(1, tr("Measure"), parent), session_(session) {
  set_hint(
      tr("Tape from nasion over the top to inion, from tragus over the top to tragus, and around the head "
         "above the "
         "brows. Write the three lengths down."));
  head_ = new QLabel;
  head_->setTextFormat(Qt::PlainText);
  head_->setWordWrap(true);
  fields()->addWidget(head_);
  open_head_ = new QPushButton(tr("Open a scan or MRI\u2026"));
  open_head_->setToolTip(tr("A head surface (OBJ, PLY, STL, glTF, GLB) or an MRI volume (.nii, .nii.gz)"));
  generic_head_ = new QPushButton(tr("Use the generic head"));
  // One under the other: side by side they are wider than the worksheet.
  fields()->addWidget(open_head_, 0, Qt::AlignLeft);
  fields()->addWidget(generic_head_, 0, Qt::AlignLeft);

  nasion_inion_ = add_tape(tr("Nasion to inion"), geometry::ranges::nasion_inion_mm,
                           &geometry::MeasuredTapes::nasion_inion_mm);
  tragus_tragus_ = add_tape(tr("Tragus to tragus"), geometry::ranges::tragus_tragus_mm,
                            &geometry::MeasuredTapes::tragus_tragus_mm);
  circumference_ = add_tape(tr("Around the head"), geometry::ranges::circumference_mm,
                            &geometry::MeasuredTapes::circumference_mm);
  measured_ = new QLabel;
  measured_->setObjectName("quiet");
  measured_->setWordWrap(true);
  fields()->addWidget(measured_);
  brim_ = new LengthField(tr("Cap's brim over the nasion"), geometry::ranges::brim_over_nasion_mm);
  brim_->on_commit([this](std::optional<double> mm) {
    set_problem({});
    return session_.change(
        tr("Cap"), [&](models::CaseFile& case_file) { case_file.the_case.cap.brim_over_nasion_mm = *mm; });
  });
  fields()->addWidget(brim_);
  brim_heights_ = new QLabel;
  brim_heights_->setObjectName("quiet");
  brim_heights_->setWordWrap(true);
  fields()->addWidget(brim_heights_);
  work_out_ = new QPushButton(tr("Work out tape distances"));
  work_out_->setToolTip(tr("They were left out when loading this head was cancelled."));
  fields()->addWidget(work_out_, 0, Qt::AlignLeft);
  work_out_->hide();
  connect(work_out_, &QPushButton::clicked, this, [this] {
    work_out_->hide();
    session_.work_out_tapes();
  });

  // A refusal was of what is no longer entered, once a case has come into force since.
  connect(&session_, &Session::saved_changed, this, [this] { set_problem({}); });
  connect(open_head_, &QPushButton::clicked, this, &MeasureStep::head_wanted);
  connect(generic_head_, &QPushButton::clicked, this, [this] {
    set_problem(
        session_.change(tr("Generic head"), [](models::CaseFile& case_file) { case_file.head = {}; }));
  });
}

LengthField* MeasureStep::add_tape(const QString& name, const geometry::Range& allowed,
                                   std::optional<double> geometry::MeasuredTapes::*which) {
  auto* field = new LengthField(name, allowed);
  field->set_optional(tr("none"));
  field->on_commit([this, name, which](std::optional<double> mm) {
    set_problem({});
    return session_.change(name,
                           [&](models::CaseFile& case_file) { case_file.the_case.tape_mm.*which = mm; });
  });
  fields()->addWidget(field);
  return field;
}

void MeasureStep::set_unit(LengthUnit unit) {
  unit_ = unit;
  for (LengthField* field : {nasion_inion_, tragus_tragus_, circumference_, brim_}) field->set_unit(unit);
  show_case();
}

void MeasureStep::show_case() {
  const models::CaseFile& case_file = session_.case_file();
  const geometry::MeasuredTapes& tapes = case_file.the_case.tape_mm;
  nasion_inion_->set_value(tapes.nasion_inion_mm);
  tragus_tragus_->set_value(tapes.tragus_tragus_mm);
  circumference_->set_value(tapes.circumference_mm);
  brim_->set_value(case_file.the_case.cap.brim_over_nasion_mm);
  const bool generic = case_file.head.kind == models::HeadKind::generic;
  generic_head_->setVisible(!generic);
  work_out_->setVisible(session_.is_ready() && !session_.has_tapes() && !session_.is_working());
  if (!session_.is_ready()) return;

  QString description = viewer::translated(session_.head().description);
  if (!description.isEmpty()) description[0] = description[0].toUpper();
  head_->setText(tr("Head: %1").arg(description));
  const geometry::TapeMeasures& head = session_.plan().tapes;
  const auto cm = [&](double mm) { return length_text(mm, unit_); };
  const bool none_entered = !tapes.nasion_inion_mm && !tapes.tragus_tragus_mm && !tapes.circumference_mm;
  measured_->setText((generic && none_entered
                          ? tr("No tape of this person yet. The built-in head on the stage, nobody's own, "
                               "measures %1, %2, %3 %4.")
                          : tr("The head on the stage: %1, %2, %3 %4."))
                         .arg(cm(head.nasion_inion_mm), cm(head.tragus_tragus_mm), cm(head.circumference_mm),
                              unit_name(unit_)));
  // What was measured on the person; of a scan, on the scan.
  const auto told = [&](const std::optional<double>& tape, double here) {
    return tape ? cm(*tape) : generic ? tr("none") : cm(here);
  };
  set_summary(generic && none_entered
                  ? tr("no tapes yet")
                  : tr("%1 | %2 | %3 %4")
                        .arg(told(tapes.nasion_inion_mm, head.nasion_inion_mm),
                             told(tapes.tragus_tragus_mm, head.tragus_tragus_mm),
                             told(tapes.circumference_mm, head.circumference_mm), unit_name(unit_)));

  put_cap_on();
  brim_heights_->setText(
      cap_ ? tr("With the cap on, its arrow down the nose, check by tape toward the vertex: %1")
                 .arg(viewer::translated(viewer::brim_sentence(heights_, in_unit(unit_))))
           : no_cap_);
  QStringList notes;
  for (const TapeBeside& tape : tapes_that_differ(case_file.the_case, session_.plan()))
    notes << tr("%1: %2 measured, but %3 on this head.")
                 .arg(tape.name, length_with_unit(tape.entered_mm, unit_),
                      length_with_unit(tape.here_mm, unit_));
  const auto& caution = session_.plan().size_caution;
  if (caution) notes << viewer::translated(caution->sentence);
  for (const geometry::Message& note : session_.head().notes) notes << viewer::translated(note);
  if (session_.has_cortex()) notes << session_.cortex_notes();
  set_note(notes.join(QLatin1Char('\n')));
}

void MeasureStep::put_cap_on() {
  const geometry::Head& head = session_.head().head;
  const double brim_mm = session_.case_file().the_case.cap.brim_over_nasion_mm;
  if (cap_on_head_ && cap_on_head_->same_as(head) && cap_brim_mm_ == brim_mm) return;
  cap_on_head_ = head;
  cap_brim_mm_ = brim_mm;
  cap_.reset();
  heights_ = {};
  no_cap_.clear();
  try {
    const geometry::Cap cap = geometry::cap_on(head, brim_mm);
    heights_ = geometry::brim_heights(head, cap);
    height_lines_ = geometry::height_lines(head, heights_);
    cap_ = std::make_shared<const geometry::CapVeil>(geometry::cap_veil(head, cap));
  } catch (const geometry::GeometryError& error) {
    no_cap_ = viewer::translated(error);
  }
}

StageContent MeasureStep::stage_content(const HeldCoil& coil) const {
  StageContent content = content_with({Thing::tapes, Thing::cap}, coil);
  content.shown.lines = std::set<std::string>{"midline", "coronal", "circumference"};
  content.shown.cap = cap_;
  if (cap_) {
    const std::array<std::optional<double>, 4> mm{heights_.nasion_mm, heights_.left_tragus_mm,
                                                  heights_.right_tragus_mm, heights_.inion_mm};
    for (std::size_t i = 0; i < mm.size(); ++i) {
      if (!mm[i]) continue;
      viewer::Note note;
      note.line = height_lines_[i];
      note.role = viewer::Role::cap;
      note.text = length_with_unit(*mm[i], unit_).toStdString();
      content.shown.notes.push_back(note);
    }
  }
  content.look.view =
      session_.case_file().the_case.side == geometry::Side::left ? View::front_left : View::front_right;
  return content;
}

}  // namespace scalpmark::window
