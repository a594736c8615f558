#include "viewer/window/steps/landmarks_step.h"

#include <QCompleter>
#include <QGridLayout>
#include <QHBoxLayout>
#include <cmath>

#include "geometry/plan/tape_from.h"
#include "viewer/window/fields/text_entry.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using viewer::Thing;
using viewer::View;

namespace {

QString capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

QString where_it_is(Fiducial which) {
  switch (which) {
    case Fiducial::nasion:
      return LandmarksStep::tr("Click the nasion: the hollow where nose meets forehead.");
    case Fiducial::inion:
      return LandmarksStep::tr("Click the inion: the bony bump at the back, above the neck.");
    case Fiducial::left_tragus:
      return LandmarksStep::tr("Click the patient's left tragus: just in front of the left ear canal.");
    case Fiducial::right_tragus:
      break;
  }
  return LandmarksStep::tr("Click the patient's right tragus: just in front of the right ear canal.");
}

}  // namespace

LandmarksStep::LandmarksStep(Session& session, QWidget* parent)
    : Step(2, tr("Landmarks"), parent), session_(session) {
  build_known();
  build_placing();
  connect(systems_, &Choice::picked, this, [this](int index) {
    system_ = index == 0   ? geometry::LandmarkSystem::ten_twenty
              : index == 1 ? geometry::LandmarkSystem::ten_ten
                           : geometry::LandmarkSystem::ten_five;
    landmarks_.reset();
    emit system_chosen();
  });
  connect(find_, &QLineEdit::returnPressed, this, [this] { look_for(find_->text()); });
  connect(find_, &QLineEdit::textEdited, this, [this](const QString& typed) {
    if (!typed.trimmed().isEmpty()) return;
    set_problem({});
    found_.reset();
    found_text_->hide();
    found_tapes_->hide();
    emit landmark_found();
  });
  connect(guess_, &QPushButton::clicked, this, &LandmarksStep::guess_wanted);
  connect(confirm_, &QPushButton::clicked, this, &LandmarksStep::confirmed);
  connect(other_way_up_, &QPushButton::clicked, this, &LandmarksStep::turn_wanted);
  connect(use_points_, &QPushButton::clicked, this, [this] { set_problem(session_.use_placed()); });
  connect(give_up_, &QPushButton::clicked, this, [this] { session_.drop_unplaced(); });
  connect(move_points_, &QPushButton::clicked, this, [this] {
    session_.place_anew();
    want(Fiducial::nasion);
  });
}

void LandmarksStep::build_known() {
  known_ = new QWidget;
  auto* known = new QVBoxLayout(known_);
  known->setContentsMargins(0, 0, 0, 0);
  systems_ = new Choice(tr("Shown on the head"), {{tr("10-20"), tr("The 21 positions of the 10-20 system")},
                                                  {tr("10-10"), tr("The positions of the 10-10 system")},
                                                  {tr("10-5"), tr("All 345 positions of the 10-5 system")}});
  systems_->choose(1);
  known->addWidget(systems_);
  auto* row = new QHBoxLayout;
  auto* label = new QLabel(tr("Find"));
  find_ = new TextEntry;
  find_->setPlaceholderText(tr("a label, such as F3"));
  find_->setMaxLength(12);
  find_->setToolTip(tr("A label of the 10-5 system, such as F3; Enter marks it on the stage"));
  find_->setAccessibleName(tr("Find a landmark by its label"));
  label->setBuddy(find_);
  QStringList labels;
  for (const std::string& each : geometry::landmark_labels(geometry::LandmarkSystem::ten_five))
    labels << QString::fromStdString(each);
  auto* completer = new QCompleter(labels, find_);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  find_->setCompleter(completer);
  row->addWidget(label);
  row->addWidget(find_, 1);
  known->addLayout(row);
  found_text_ = new QLabel;
  found_text_->setWordWrap(true);
  found_text_->hide();
  known->addWidget(found_text_);
  found_tapes_ = new QLabel;
  found_tapes_->setObjectName("strong");
  found_tapes_->setWordWrap(true);
  found_tapes_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  found_tapes_->hide();
  known->addWidget(found_tapes_);
  move_points_ = new QPushButton(tr("Place nasion, inion and tragi anew\u2026"));
  known->addWidget(move_points_, 0, Qt::AlignLeft);
  fields()->addWidget(known_);
  connect(completer, qOverload<const QString&>(&QCompleter::activated), this, &LandmarksStep::look_for);
}

void LandmarksStep::build_placing() {
  placing_ = new QWidget;
  auto* placing = new QVBoxLayout(placing_);
  placing->setContentsMargins(0, 0, 0, 0);
  place_text_ = new QLabel;
  place_text_->setObjectName("strong");
  place_text_->setWordWrap(true);
  placing->addWidget(place_text_);
  auto* grid = new QGridLayout;
  for (const Fiducial which : all_fiducials) {
    auto* button = new QPushButton(capital(name_of(which)));
    button->setCheckable(true);
    const auto i = static_cast<int>(which);
    grid->addWidget(button, i / 2, i % 2);
    points_[static_cast<std::size_t>(which)] = button;
    connect(button, &QPushButton::clicked, this, [this, which] { want(which); });
  }
  placing->addLayout(grid);
  confirm_ = new QPushButton(tr("This one is right"));
  confirm_->setObjectName("main");
  confirm_->setToolTip(tr("Confirms the computer's guess; or drag the point where it belongs"));
  placing->addWidget(confirm_);
  use_points_ = new QPushButton(tr("Use these four points"));
  use_points_->setObjectName("main");
  placing->addWidget(use_points_);
  auto* buttons = new QHBoxLayout;
  other_way_up_ = new QPushButton(tr("Turn upside down"));
  other_way_up_->setToolTip(
      tr("Files do not say which way is up; press until the head stands upright and faces you."));
  give_up_ = new QPushButton(tr("Discard this head"));
  guess_ = new QPushButton(tr("Guess the four points"));
  guess_->setToolTip(
      tr("Fits the built-in head to this skin; each of the four is then to be confirmed or moved"));
  guess_->setAccessibleDescription(guess_->toolTip());
  placing->addWidget(guess_, 0, Qt::AlignLeft);
  buttons->addWidget(other_way_up_);
  buttons->addWidget(give_up_);
  buttons->addStretch(1);
  placing->addLayout(buttons);
  fields()->addWidget(placing_);
  placing_->hide();
}

void LandmarksStep::look_for(const QString& typed) {
  if (!session_.is_ready() || typed.trimmed().isEmpty()) return;
  const std::string label = typed.trimmed().toStdString();
  const auto found = geometry::landmark(session_.head().head, label);
  if (!found) {
    set_problem(tr("There is no landmark \u201c%1\u201d in the 10-5 system; type a label such as F3 or CPz.")
                    .arg(typed.trimmed()));
    return;
  }
  set_problem({});
  const bool again = found_ && found_->name == found->name;
  found_ = found;
  const QString name = QString::fromStdString(found->name);
  found_text_->setText(
      name.compare(typed.trimmed(), Qt::CaseInsensitive) == 0
          ? tr("%1 is marked on the stage.").arg(name)
          : tr("%1 is the older label of %2, marked on the stage.").arg(typed.trimmed(), name));
  found_text_->show();
  show_tapes_to_found();
  if (!again) emit landmark_found();
}

void LandmarksStep::show_tapes_to_found() {
  found_tapes_->setVisible(found_.has_value());
  if (!found_) return;
  const geometry::TapeFrom from = geometry::tape_from(session_.head().head, found_->on_skin);
  const auto length = [](double mm) { return QString::fromStdString(viewer::tape_length(mm)); };
  found_tapes_->setText(
      tr("By tape: %1 from the vertex, %2 from the nasion, %3 from the left tragus, %4 from the right.")
          .arg(length(from.vertex_mm), length(from.nasion_mm), length(from.left_tragus_mm),
               length(from.right_tragus_mm)));
}

viewer::Gaze LandmarksStep::gaze_at_found() const {
  const auto& axes = session_.head().head.axes();
  const Eigen::Vector3d out = session_.head().head.skin().smooth_normal(found_->on_skin);
  viewer::Gaze gaze;
  gaze.toward_eye = out;
  const Eigen::Vector3d up = std::abs(out.dot(axes.up)) > 0.97 ? axes.front : axes.up;
  gaze.up = (up - up.dot(out) * out).normalized();
  return gaze;
}

void LandmarksStep::want(Fiducial which) {
  wanted_ = which;
  show_points();
  emit fiducial_wanted();
}

void LandmarksStep::show_guessing(bool on) {
  guess_->setEnabled(!on);
  guess_->setText(on ? tr("Guessing\u2026") : tr("Guess the four points"));
}

void LandmarksStep::show_points() {
  if (!session_.unplaced()) return;
  for (const Fiducial which : all_fiducials) {
    const bool placed = session_.unplaced()->placed[static_cast<std::size_t>(which)].has_value();
    auto* button = points_[static_cast<std::size_t>(which)];
    const bool guess = session_.unplaced()->is_guess(which);
    button->setText((guess    ? QStringLiteral("? ")
                     : placed ? QStringLiteral("\u2713 ")
                              : QString()) +
                    capital(name_of(which)));
    button->setAccessibleName((guess    ? tr("%1, guessed")
                               : placed ? tr("%1, placed")
                                        : tr("%1, not placed"))
                                  .arg(name_of(which)));
    button->setChecked(which == wanted_);
  }
  const bool complete = session_.unplaced()->complete();
  const QString problem = session_.placing_problem();
  const bool guess = session_.unplaced()->is_guess(wanted_);
  place_text_->setText(
      complete ? tr("All four are placed. Drag one to move it, or use them.")
      : guess  ? tr("A computer's guess. Look at it: is it right? Else drag it where it belongs. %1")
                    .arg(where_it_is(wanted_))
              : where_it_is(wanted_));
  confirm_->setVisible(guess);
  use_points_->setVisible(complete);
  use_points_->setEnabled(complete && problem.isEmpty());
  set_problem(problem);
}

void LandmarksStep::show_case() {
  landmarks_.reset();
  const bool placing = session_.unplaced().has_value();
  if (!placing && !placing_->isHidden()) set_problem({});  // of points that are no longer being placed
  placing_->setVisible(placing);
  known_->setVisible(!placing);
  move_points_->setVisible(session_.case_file().head.kind != models::HeadKind::generic);
  set_hint(
      placing ? tr("Turn the head by dragging beside it; drag a placed point to move it.")
      : !session_.is_ready()
          ? tr("Pencil a short line half way along each long tape; where the two lines cross is the vertex, Cz.")
          : tr("Pencil a short line half way along each long tape, at %1 of nasion to inion and at %2 of tragus to "
               "tragus; where the two lines cross is the vertex, Cz.")
                .arg(QString::fromStdString(viewer::half_of_tape(session_.plan().tapes.nasion_inion_mm)),
                     QString::fromStdString(viewer::half_of_tape(session_.plan().tapes.tragus_tragus_mm))));
  if (placing) {
    QStringList notes;
    for (const geometry::Message& note : session_.unplaced()->notes) notes << viewer::translated(note);
    set_note(notes.join(QLatin1Char('\n')));
    show_points();
  } else {
    set_note({});
    set_summary(system_ == geometry::LandmarkSystem::ten_twenty ? tr("10-20")
                : system_ == geometry::LandmarkSystem::ten_ten  ? tr("10-10")
                                                                : tr("10-5"));
  }
  // A found landmark lies elsewhere on another head.
  if (found_ && session_.is_ready()) {
    found_ = geometry::landmark(session_.head().head, found_->name);
    show_tapes_to_found();
  }
}

StageContent LandmarksStep::stage_content(const HeldCoil& coil) const {
  StageContent content = content_with({Thing::landmarks, Thing::tapes}, coil);
  content.shown.lines = std::set<std::string>{"midline", "coronal"};
  content.look.view =
      session_.case_file().the_case.side == geometry::Side::left ? View::front_left : View::front_right;
  if (system_ != geometry::LandmarkSystem::ten_ten) {
    if (!landmarks_)
      landmarks_ = std::make_shared<const std::vector<geometry::Landmark>>(
          geometry::landmarks(session_.head().head, system_));
    content.shown.other_landmarks = landmarks_;
  }
  if (found_) {
    viewer::Note note;
    note.shape = viewer::Shape::brackets;
    note.role = viewer::Role::found;
    note.at = found_->at;
    note.along = session_.head().head.axes().right;
    note.text = found_->name;
    content.shown.notes.push_back(note);
  }
  return content;
}

}  // namespace scalpmark::window
