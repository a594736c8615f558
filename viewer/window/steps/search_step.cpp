#include "viewer/window/steps/search_step.h"

#include <QAbstractItemView>
#include <QEvent>
#include <QLabel>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/base/ranges.h"
#include "geometry/plan/other_side.h"
#include "models/coils/coil_library.h"
#include "viewer/words/data_words.h"
#include "viewer/words/shift_words.h"

namespace scalpmark::window {

using viewer::Thing;

namespace ranges = geometry::ranges;

SearchStep::SearchStep(Session& session, QWidget* parent) : Step(3, tr("Search"), parent), session_(session) {
  side_ = new Choice(tr("Side"),
                     {{tr("Left"), tr("The patient's left")}, {tr("Right"), tr("The patient's right")}});
  fields()->addWidget(side_);
  lateral_ = add_length(tr("From the vertex toward the ear"), ranges::lateral_mm,
                        [](geometry::Case& c) -> double& { return c.search.lateral_mm; });
  anterior_ = add_length(tr("Then forward"), ranges::anterior_mm,
                         [](geometry::Case& c) -> double& { return c.search.anterior_mm; });
  pitch_ = add_length(tr("Grid step"), ranges::pitch_mm,
                      [](geometry::Case& c) -> double& { return c.search.pitch_mm; });
  add_pad();
  grid_on_ = new Choice(tr("The grid is drawn on"),
                        {{tr("edge marks"), tr("What staff draw: the nine marks are evenly spaced")},
                         {tr("pulse points"), tr("The nine pulse points are evenly spaced")}});
  fields()->addWidget(grid_on_);

  add_coils();
  angle_ = new AngleField(tr("Angle to the midline"), ranges::angle_deg);
  angle_->on_commit([this](std::optional<double> degrees) {
    set_problem({});
    return session_.change(
        tr("Coil angle"), [&](models::CaseFile& case_file) { case_file.the_case.coil.angle_deg = *degrees; });
  });
  fields()->addWidget(angle_);
  centre_to_edge_ = add_length(tr("Centre to front edge"), ranges::centre_to_edge_mm,
                               [](geometry::Case& c) -> double& { return c.coil.centre_to_edge_mm; });
  lift_ = add_length(tr("Cap and hair"), ranges::lift_mm,
                     [](geometry::Case& c) -> double& { return c.coil.lift_mm; });
  add_rules();

  shift_note_ = new QLabel;
  shift_note_->setWordWrap(true);
  fields()->addWidget(shift_note_);
  rules_ = new RulesPicture;
  fields()->addWidget(rules_);

  connect_fields();
}

// High up: it is used at every visit, what follows once a case.
void SearchStep::add_pad() {
  auto* on = new QLabel(tr("Try a spot: lay the coil on"));
  on->setObjectName("strong");
  fields()->addWidget(on);
  spots_ = new SpotPad(tr("Lay the coil on"));
  fields()->addWidget(spots_);
  answered_ = new QPushButton(tr("This spot answered"));
  answered_->setToolTip(tr("Takes the spot that the coil is on as the hotspot, as in the next steps"));
  answered_->setAccessibleDescription(answered_->toolTip());
  fields()->addWidget(answered_, 0, Qt::AlignLeft);
}

void SearchStep::add_rules() {
  drawn_by_ =
      new Choice(tr("The grid's edge marks are drawn by"),
                 {{tr("tape"), tr("A tape of the centre-to-edge length along the skin from the pulse point")},
                  {tr("drop"), tr("Looking straight down past the edge of the coil held there")},
                  {tr("nearest"), tr("The skin nearest to the edge of the coil held there")}});
  fields()->addWidget(drawn_by_);
  laid_by_ = new Choice(tr("The coil is laid over a mark by"),
                        {{tr("tape"), tr("A tape run from under the coil's centre to the mark")},
                         {tr("drop"), tr("Looking straight down past the coil's edge at the mark")},
                         {tr("nearest"), tr("Bringing the coil's edge as near to the mark as it goes")}});
  fields()->addWidget(laid_by_);
}

void SearchStep::add_coils() {
  auto* coil = new QLabel(tr("Coil"));
  coil->setObjectName("strong");
  fields()->addWidget(coil);
  coil_ = new QComboBox;
  coil_->setAccessibleName(tr("Coil"));
  coil_->setFocusPolicy(Qt::StrongFocus);
  coil_->installEventFilter(this);
  coil_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  coil_->setMinimumContentsLength(20);
  coil_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  for (const geometry::Coil& each : models::coils()) {
    coil_->addItem(QString::fromStdString(viewer::coil_text(each.title)), QString::fromStdString(each.model));
    coil_->setItemData(coil_->count() - 1, QString::fromStdString(viewer::coil_text(each.title)),
                       Qt::ToolTipRole);
  }
  coil_->view()->setTextElideMode(Qt::ElideNone);
  coil_->view()->setAccessibleName(tr("Coils to choose from"));
  coil_->setToolTip(tr("The length from its centre to its front edge becomes the coil's own."));
  coil_->setAccessibleDescription(coil_->toolTip());
  coil->setBuddy(coil_);
  fields()->addWidget(coil_);
  coil_note_ = new QLabel;
  coil_note_->setObjectName("note");
  coil_note_->setWordWrap(true);
  fields()->addWidget(coil_note_);
}

void SearchStep::connect_fields() {
  connect(coil_, qOverload<int>(&QComboBox::activated), this, [this](int index) {
    const geometry::Coil chosen = models::coil(coil_->itemData(index).toString().toStdString());
    if (chosen.model == session_.case_file().the_case.coil.model.model) return;
    change(tr("Coil"), [&](models::CaseFile& case_file) {
      case_file.the_case.coil.model = chosen;
      case_file.the_case.coil.centre_to_edge_mm = chosen.centre_to_edge_mm;
    });
  });
  connect(side_, &Choice::picked, this, [this](int index) {
    change(tr("Side"), [index](models::CaseFile& case_file) {
      geometry::lay_on_side(case_file.the_case, index == 0 ? geometry::Side::left : geometry::Side::right);
    });
  });
  connect(grid_on_, &Choice::picked, this, [this](int index) {
    change(tr("Grid"), [index](models::CaseFile& case_file) {
      case_file.the_case.search.grid_on =
          index == 0 ? geometry::GridOn::edge_marks : geometry::GridOn::pulse_points;
    });
  });
  connect(drawn_by_, &Choice::picked, this, [this](int index) {
    change(tr("Rule for drawing"), [index](models::CaseFile& case_file) {
      case_file.the_case.search.drawn_by = geometry::all_mark_rules[static_cast<size_t>(index)];
    });
  });
  connect(laid_by_, &Choice::picked, this, [this](int index) {
    change(tr("Rule for laying"), [index](models::CaseFile& case_file) {
      case_file.the_case.coil.laid_by = geometry::all_mark_rules[static_cast<size_t>(index)];
    });
  });
  connect(spots_, &SpotPad::chosen, this, &SearchStep::spot_wanted);
  connect(answered_, &QPushButton::clicked, this, [this] {
    if (!tried_) return;
    change(tr("Hotspot"), [spot = *tried_](models::CaseFile& case_file) {
      geometry::take_hotspot(case_file.the_case, spot);
    });
  });
}

LengthField* SearchStep::add_length(const QString& name, const geometry::Range& allowed,
                                    std::function<double&(geometry::Case&)> setting) {
  auto* field = new LengthField(name, allowed);
  field->on_commit([this, name, setting = std::move(setting)](std::optional<double> mm) {
    set_problem({});
    return session_.change(name, [&](models::CaseFile& case_file) { setting(case_file.the_case) = *mm; });
  });
  fields()->addWidget(field);
  return field;
}

void SearchStep::change(const QString& what, const std::function<void(models::CaseFile&)>& edit) {
  const QString problem = session_.change(what, edit);
  set_problem(problem);
  if (!problem.isEmpty()) show_case();  // the buttons go back to what holds
}

// A wheel that scrolls the worksheet does not change the coil on its way.
bool SearchStep::eventFilter(QObject* watched, QEvent* event) {
  if (watched == coil_ && event->type() == QEvent::Wheel && !coil_->hasFocus()) {
    event->ignore();
    return true;
  }
  return Step::eventFilter(watched, event);
}

void SearchStep::set_unit(LengthUnit unit) {
  unit_ = unit;
  for (LengthField* field : {lateral_, anterior_, pitch_, centre_to_edge_, lift_}) field->set_unit(unit);
  show_case();
}

void SearchStep::show_case() {
  const geometry::Case& c = session_.case_file().the_case;
  const bool left = c.side == geometry::Side::left;
  side_->choose(left ? 0 : 1);
  lateral_->set_value(c.search.lateral_mm);
  anterior_->set_value(c.search.anterior_mm);
  pitch_->set_value(c.search.pitch_mm);
  grid_on_->choose(c.search.grid_on == geometry::GridOn::edge_marks ? 0 : 1);
  coil_->setCurrentIndex(coil_->findData(QString::fromStdString(c.coil.model.model)));
  coil_note_->setText(QString::fromStdString(viewer::coil_text(c.coil.model.note)));
  coil_note_->setVisible(!c.coil.model.note.empty());
  angle_->set_value(c.coil.angle_deg);
  centre_to_edge_->set_value(c.coil.centre_to_edge_mm);
  lift_->set_value(c.coil.lift_mm);
  drawn_by_->choose(static_cast<int>(c.search.drawn_by));
  laid_by_->choose(static_cast<int>(c.coil.laid_by));
  spots_->set_side(c.side);
  spots_->mark(c.hotspot_awaited ? std::nullopt : std::optional(c.hotspot));
  show_answered();

  const QString lateral = length_with_unit(c.search.lateral_mm, unit_);
  const QString anterior = length_with_unit(std::abs(c.search.anterior_mm), unit_);
  set_hint(tr("From the vertex tape %1 toward the %2 ear, then %3 %4: the start. Pencil a bar along the "
              "coil's front "
              "edge at each of the nine spots.")
               .arg(lateral, left ? tr("left") : tr("right"), anterior,
                    c.search.anterior_mm < 0 ? tr("back") : tr("forward")));
  set_summary(tr("%1, %2 + %3")
                  .arg(left ? tr("left") : tr("right"), length_text(c.search.lateral_mm, unit_),
                       length_with_unit(c.search.anterior_mm, unit_)));
}

void SearchStep::show_coil(const HeldCoil& coil) {
  using geometry::GridPosition;
  tried_ = coil.on == viewer::CoilOn::spot    ? std::optional(GridPosition{coil.row, coil.column})
           : coil.on == viewer::CoilOn::start ? std::optional(GridPosition{0, 0})
                                              : std::nullopt;
  spots_->choose(tried_);
  show_answered();
  std::string note;
  if (session_.is_ready() && (coil.on == viewer::CoilOn::spot || coil.on == viewer::CoilOn::start)) {
    const geometry::Case& c = session_.case_file().the_case;
    note = viewer::shift_sentence(placement_of(session_.plan(), coil), c.search.drawn_by, c.coil);
  }
  shift_note_->setText(QString::fromStdString(note));
  shift_note_->setVisible(!note.empty());
  show_rules(coil);
}

void SearchStep::show_rules(const HeldCoil& coil) {
  std::optional<geometry::SideView> view;
  const geometry::Case& c = session_.case_file().the_case;
  if (session_.is_ready()) try {
      view = geometry::side_view(session_.head().head, c.coil.model, placement_of(session_.plan(), coil));
    } catch (const geometry::GeometryError&) {
      // a skin that cannot be cut there has no picture
    }
  rules_->show_view(view, c.coil.laid_by);
}

void SearchStep::show_answered() {
  const geometry::Case& c = session_.case_file().the_case;
  answered_->setEnabled(tried_ && (c.hotspot_awaited || *tried_ != c.hotspot));
}

QString SearchStep::shift_note() const {
  return shift_note_->text();
}

StageContent SearchStep::stage_content(const HeldCoil& coil) const {
  StageContent content = content_with(
      {Thing::grid, Thing::start, Thing::coil, Thing::angle, Thing::edge_marks, Thing::wanted, Thing::tapes},
      coil);
  content.shown.lines = std::set<std::string>{"lateral", "anterior"};
  content.shown.names_all = false;
  return content;
}

}  // namespace scalpmark::window
