#include "viewer/window/steps/cap_fields.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "viewer/words/cap_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

constexpr geometry::Range brim_height_mm{0, 200}, arrow_aside_mm{-60, 60};
constexpr std::size_t arrow_field = 4;

/// Where each field's reading is kept.
std::optional<double>& brim_reading(geometry::BrimReadings& brim, std::size_t which) {
  const std::array all{&brim.heights.nasion_mm, &brim.heights.left_tragus_mm, &brim.heights.right_tragus_mm,
                       &brim.heights.inion_mm, &brim.arrow_mm};
  return *all[which];
}

}  // namespace

CapFields::CapFields(Visit& visit, QWidget* parent) : QWidget(parent), visit_(visit) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* row = new QHBoxLayout;
  auto* label = new QLabel(tr("Cap"));
  label->setObjectName("strong");
  by_brim_ = new QPushButton(tr("By its brim"));
  by_brim_->setCheckable(true);
  by_brim_->setAccessibleName(tr("Cap: enter the heights of its brim"));
  by_brim_->setToolTip(tr("Two or more heights say how the cap has slipped since the marks were made"));
  row->addWidget(label, 1);
  row->addWidget(by_brim_);
  column->addLayout(row);

  rows_ = new QWidget;
  auto* rows = new QVBoxLayout(rows_);
  rows->setContentsMargins(10, 0, 0, 0);
  rows->setSpacing(4);
  const std::array<QString, 5> names{tr("brim over the nasion"), tr("brim over the left tragus"),
                                     tr("brim over the right tragus"), tr("brim over the inion"),
                                     tr("arrow right of the nasion")};
  for (std::size_t i = 0; i < names.size(); ++i) {
    auto* field = new LengthField(names[i], i == arrow_field ? arrow_aside_mm : brim_height_mm);
    field->set_optional(tr("none"));
    field->on_commit([this, i](std::optional<double> mm) {
      geometry::BrimReadings now = visit_.brim();
      brim_reading(now, i) = mm;
      return visit_.set(now);
    });
    fields_[i] = field;
    rows->addWidget(field);
  }
  auto* hint = new QLabel(tr(
      "Heights by tape, straight up toward the vertex. The arrow where it passes the nasion, to the patient's "
      "right; to the left with a minus."));
  hint->setObjectName("quiet");
  hint->setWordWrap(true);
  rows->addWidget(hint);
  rows_->hide();
  column->addWidget(rows_);
  said_ = new QLabel;
  said_->setWordWrap(true);
  said_->hide();
  column->addWidget(said_);
  connect(by_brim_, &QPushButton::clicked, rows_, &QWidget::setVisible);
}

void CapFields::set_unit(LengthUnit unit) {
  unit_ = unit;
  for (LengthField* field : fields_) field->set_unit(unit);
  show_case();
}

void CapFields::show_case() {
  geometry::BrimReadings brim = visit_.brim();
  for (std::size_t i = 0; i < fields_.size(); ++i) fields_[i]->set_value(brim_reading(brim, i));
  QString text;
  if (const auto& cap = visit_.cap()) {
    text = QStringLiteral("<b>%1</b>")
               .arg(viewer::translated(viewer::cap_sentence(*cap, in_unit(unit_))).toHtmlEscaped());
    const geometry::Message open = viewer::unsaid_sentence(cap->found);
    if (!open.empty()) text += QStringLiteral("<br>") + viewer::translated(open).toHtmlEscaped();
  }
  said_->setText(text);
  said_->setVisible(!text.isEmpty());
}

}  // namespace scalpmark::window
