#include "viewer/words/data_words.h"

#include <QCoreApplication>
#include <string_view>

#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr const char* coil_texts[]{
    QT_TRANSLATE_NOOP("Coils", "Angled two-wing coil, 150 degrees between the wings"),
    QT_TRANSLATE_NOOP("Coils", "An angled coil may rest on its wings with its centre clear of the skin."),
    QT_TRANSLATE_NOOP("Coils", "Figure-of-eight coil, 70 mm"),
    QT_TRANSLATE_NOOP("Coils", "Figure-of-eight coil, 90 mm"),
    QT_TRANSLATE_NOOP("Coils", "Round coil, 100 mm"),
    QT_TRANSLATE_NOOP(
        "Coils",
        "Under a round coil the field is strongest in a ring under its windings, not under its centre."),
};

constexpr const char* gyri[]{
    QT_TRANSLATE_NOOP("Regions", "precentral gyrus"),
    QT_TRANSLATE_NOOP("Regions", "superior frontal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "superior frontal gyrus, orbital part"),
    QT_TRANSLATE_NOOP("Regions", "middle frontal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "middle frontal gyrus, orbital part"),
    QT_TRANSLATE_NOOP("Regions", "inferior frontal gyrus, opercular part"),
    QT_TRANSLATE_NOOP("Regions", "inferior frontal gyrus, triangular part"),
    QT_TRANSLATE_NOOP("Regions", "inferior frontal gyrus, orbital part"),
    QT_TRANSLATE_NOOP("Regions", "Rolandic operculum"),
    QT_TRANSLATE_NOOP("Regions", "supplementary motor area"),
    QT_TRANSLATE_NOOP("Regions", "olfactory cortex"),
    QT_TRANSLATE_NOOP("Regions", "superior frontal gyrus, medial part"),
    QT_TRANSLATE_NOOP("Regions", "superior frontal gyrus, medial orbital part"),
    QT_TRANSLATE_NOOP("Regions", "gyrus rectus"),
    QT_TRANSLATE_NOOP("Regions", "insula"),
    QT_TRANSLATE_NOOP("Regions", "anterior cingulate gyrus"),
    QT_TRANSLATE_NOOP("Regions", "middle cingulate gyrus"),
    QT_TRANSLATE_NOOP("Regions", "posterior cingulate gyrus"),
    QT_TRANSLATE_NOOP("Regions", "hippocampus"),
    QT_TRANSLATE_NOOP("Regions", "parahippocampal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "amygdala"),
    QT_TRANSLATE_NOOP("Regions", "calcarine cortex"),
    QT_TRANSLATE_NOOP("Regions", "cuneus"),
    QT_TRANSLATE_NOOP("Regions", "lingual gyrus"),
    QT_TRANSLATE_NOOP("Regions", "superior occipital gyrus"),
    QT_TRANSLATE_NOOP("Regions", "middle occipital gyrus"),
    QT_TRANSLATE_NOOP("Regions", "inferior occipital gyrus"),
    QT_TRANSLATE_NOOP("Regions", "fusiform gyrus"),
    QT_TRANSLATE_NOOP("Regions", "postcentral gyrus"),
    QT_TRANSLATE_NOOP("Regions", "superior parietal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "inferior parietal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "supramarginal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "angular gyrus"),
    QT_TRANSLATE_NOOP("Regions", "precuneus"),
    QT_TRANSLATE_NOOP("Regions", "paracentral lobule"),
    QT_TRANSLATE_NOOP("Regions", "caudate nucleus"),
    QT_TRANSLATE_NOOP("Regions", "putamen"),
    QT_TRANSLATE_NOOP("Regions", "pallidum"),
    QT_TRANSLATE_NOOP("Regions", "thalamus"),
    QT_TRANSLATE_NOOP("Regions", "transverse temporal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "superior temporal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "temporal pole, superior part"),
    QT_TRANSLATE_NOOP("Regions", "middle temporal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "temporal pole, middle part"),
    QT_TRANSLATE_NOOP("Regions", "inferior temporal gyrus"),
    QT_TRANSLATE_NOOP("Regions", "cerebellum"),
    QT_TRANSLATE_NOOP("Regions", "vermis of the cerebellum"),
};

std::string from_data(const char* context, const std::string& english) {
  return QCoreApplication::translate(context, english.c_str()).toStdString();
}

}  // namespace

std::string coil_text(const std::string& english) {
  return english.empty() ? english : from_data("Coils", english);
}

std::string region_text(const std::string& english) {
  constexpr std::string_view area = "Brodmann area ", left = "left ", right = "right ";
  if (english.starts_with(area)) return words(Words::tr("Brodmann area %1"), {english.substr(area.size())});
  if (english.starts_with(left))
    return words(Words::tr("left %1", "a gyrus"), {from_data("Regions", english.substr(left.size()))});
  if (english.starts_with(right))
    return words(Words::tr("right %1", "a gyrus"), {from_data("Regions", english.substr(right.size()))});
  return from_data("Regions", english);
}

std::vector<std::string> translatable_data() {
  std::vector<std::string> all(std::begin(coil_texts), std::end(coil_texts));
  all.insert(all.end(), std::begin(gyri), std::end(gyri));
  return all;
}

}  // namespace scalpmark::viewer
