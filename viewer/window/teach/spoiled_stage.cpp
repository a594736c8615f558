#include "viewer/window/teach/spoiled_stage.h"

#include <QCoreApplication>

#include "viewer/teach/lesson.h"
#include "viewer/words/numbers.h"

namespace scalpmark::window {

using geometry::Misread;
using viewer::CoilOn;
using viewer::Shape;
using viewer::Thing;
namespace palette = viewer::palette;

namespace {

// What lupdate finds these texts under.
class SpoiledStage {
  Q_DECLARE_TR_FUNCTIONS(SpoiledStage)
};

/// The tapes that the mistake is about.
std::set<std::string> lines_of(const viewer::Mistake& mistake) {
  if (std::holds_alternative<viewer::VertexOff>(mistake)) return {"lateral", "anterior"};
  if (const auto* tape = std::get_if<viewer::TapeMisread>(&mistake)) switch (tape->which) {
      case Misread::lateral:
      case Misread::anterior:
        return {"lateral", "anterior"};
      case Misread::treatment:
        return {"treatment"};
      case Misread::centre_to_edge:
        break;
    }
  return {};
}

StageNote mark(Shape shape, viewer::Colour colour, const Eigen::Vector3d& at, const Eigen::Vector3d& along,
               const QString& text) {
  StageNote note;
  note.shape = shape;
  note.colour = colour;
  note.at = at;
  note.along = along;
  note.text = text;
  return note;
}

StageNote line(const std::vector<Eigen::Vector3d>& along, double length_mm) {
  StageNote note;
  note.line = along;
  note.colour = palette::text;
  note.text = QString::fromStdString(viewer::in_cm(length_mm));
  return note;
}

}  // namespace

LessonStage spoiled_stage(const viewer::Spoiled& spoiled, const geometry::Case& entered,
                          const geometry::Plan& plan) {
  const geometry::Placement &meant = spoiled.meant, &really = spoiled.result.really;
  const bool at_start = spoiled.meant_on == CoilOn::start;
  LessonStage stage;
  viewer::Shown& shown = stage.shown;
  shown.lines = lines_of(spoiled.mistake);
  shown.things = {Thing::skin, Thing::coil, Thing::labels};
  if (!shown.lines->empty()) shown.things.insert(Thing::tapes);
  if (at_start) {
    shown.things.insert(Thing::landmarks);
    shown.landmarks = std::set<std::string>{"Cz"};
  }
  if (shown.lines->contains("treatment")) shown.things.insert(Thing::hotspot);
  shown.coil_on = CoilOn::elsewhere;
  shown.placement = really;

  const auto across = [](const geometry::Placement& p) { return p.front.cross(p.normal); };
  const auto& meant_mark = meant.edge_mark.by(entered.coil.mark_rule);
  const auto& real_mark = really.edge_mark.by(entered.coil.mark_rule);
  if (!spoiled.edge_line.empty()) stage.notes.push_back(line(spoiled.edge_line, spoiled.edge_mark_off_mm));
  if (!spoiled.pulse_line.empty()) stage.notes.push_back(line(spoiled.pulse_line, spoiled.result.off_mm));
  if (meant_mark && !spoiled.edge_line.empty())
    stage.notes.push_back(mark(Shape::bar, viewer::paler(palette::edge_mark, 0.5), *meant_mark, across(meant),
                               SpoiledStage::tr("wanted edge mark")));
  stage.notes.push_back(at_start ? mark(Shape::disc, palette::start, spoiled.result.meant, meant.forward,
                                        SpoiledStage::tr("wanted search start"))
                                 : mark(Shape::diamond, palette::treatment, spoiled.result.meant,
                                        meant.forward, SpoiledStage::tr("wanted pulse point")));
  if (const auto& vertex = spoiled.result.vertex)
    stage.notes.push_back(mark(Shape::small_bar, palette::construction, *vertex, plan.axes.right,
                               SpoiledStage::tr("vertex as marked")));
  if (real_mark)
    stage.notes.push_back(mark(Shape::bar, palette::edge_mark, *real_mark, across(really),
                               spoiled.edge_line.empty() ? SpoiledStage::tr("edge mark, in its place")
                                                         : SpoiledStage::tr("real edge mark")));
  stage.notes.push_back(mark(Shape::disc, palette::pulse, really.pulse, really.forward,
                             spoiled.pulse_line.empty() ? SpoiledStage::tr("pulse point, as wanted")
                                                        : SpoiledStage::tr("real pulse point")));
  return stage;
}

viewer::CloseLook close_look(const viewer::Spoiled& spoiled) {
  // Pulse points and edge marks; where the vertex is to blame, that too.
  Eigen::Vector3d middle = 0.25 * (spoiled.result.meant + spoiled.result.really.pulse + spoiled.meant.edge +
                                   spoiled.result.really.edge);
  if (!spoiled.result.vertex) return {middle, 150};
  middle += 0.3 * (*spoiled.result.vertex - middle);
  return {middle, 180};
}

}  // namespace scalpmark::window
