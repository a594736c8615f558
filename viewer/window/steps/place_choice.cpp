#include "viewer/window/steps/place_choice.h"

#include <QVBoxLayout>

#include "viewer/words/found_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

PlaceChoice::PlaceChoice(const QString& mark, QWidget* parent) : QWidget(parent), mark_(mark) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  sentence_ = new QLabel;
  sentence_->setWordWrap(true);
  column->addWidget(sentence_);
  row_ = new QHBoxLayout;
  row_->setSpacing(4);
  column->addLayout(row_);
  nearest_ = new QPushButton(tr("Nearest to the plan"));
  nearest_->setCheckable(true);
  nearest_->setToolTip(tr("The tapes do not say that the mark is there"));
  nearest_->setAccessibleName(tr("%1: take the place nearest to the plan").arg(mark));
  connect(nearest_, &QPushButton::clicked, this, &PlaceChoice::nearest_picked);
  row_->addWidget(nearest_);
  row_->addStretch(1);
  hide();
}

void PlaceChoice::make_buttons(std::size_t count) {
  for (; places_.size() > count; places_.pop_back()) places_.back()->deleteLater();
  while (places_.size() < count) {
    const std::size_t index = places_.size();
    const QString tag = QString::fromStdString(viewer::place_tag(index));
    auto* button = new QPushButton(tag);
    button->setObjectName("tag");
    button->setCheckable(true);
    button->setAccessibleName(tr("%1: place %2").arg(mark_, tag));
    connect(button, &QPushButton::clicked, this, [this, index] { emit picked(index); });
    row_->insertWidget(static_cast<int>(index), button);
    places_.push_back(button);
  }
}

void PlaceChoice::show_found(const geometry::FoundMark& found, const QString& sentence) {
  sentence_->setText(sentence);
  const bool several = found.places.size() > 1;
  make_buttons(several ? found.places.size() : 0);
  for (std::size_t i = 0; i < places_.size(); ++i) {
    places_[i]->setToolTip(viewer::translated(viewer::place_sentence(found.places[i])) +
                           QStringLiteral(" (Ctrl+Alt+%1)").arg(places_[i]->text()));
    places_[i]->setChecked(found.taken == i && !found.nearest_to_plan);
  }
  nearest_->setVisible(several);
  nearest_->setChecked(found.nearest_to_plan);
  setVisible(!sentence.isEmpty());
}

}  // namespace scalpmark::window
