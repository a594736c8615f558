#include "models/brain/gyrus_names.h"

#include <algorithm>
#include <array>
#include <sstream>
#include <string_view>
#include <utility>

#include "models/files/error.h"

namespace scalpmark::models {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 45> spelt_out{{
    {"Precentral", "precentral gyrus"},
    {"Frontal_Sup", "superior frontal gyrus"},
    {"Frontal_Sup_Orb", "superior frontal gyrus, orbital part"},
    {"Frontal_Mid", "middle frontal gyrus"},
    {"Frontal_Mid_Orb", "middle frontal gyrus, orbital part"},
    {"Frontal_Inf_Oper", "inferior frontal gyrus, opercular part"},
    {"Frontal_Inf_Tri", "inferior frontal gyrus, triangular part"},
    {"Frontal_Inf_Orb", "inferior frontal gyrus, orbital part"},
    {"Rolandic_Oper", "Rolandic operculum"},
    {"Supp_Motor_Area", "supplementary motor area"},
    {"Olfactory", "olfactory cortex"},
    {"Frontal_Sup_Medial", "superior frontal gyrus, medial part"},
    {"Frontal_Med_Orb", "superior frontal gyrus, medial orbital part"},
    {"Rectus", "gyrus rectus"},
    {"Insula", "insula"},
    {"Cingulum_Ant", "anterior cingulate gyrus"},
    {"Cingulum_Mid", "middle cingulate gyrus"},
    {"Cingulum_Post", "posterior cingulate gyrus"},
    {"Hippocampus", "hippocampus"},
    {"ParaHippocampal", "parahippocampal gyrus"},
    {"Amygdala", "amygdala"},
    {"Calcarine", "calcarine cortex"},
    {"Cuneus", "cuneus"},
    {"Lingual", "lingual gyrus"},
    {"Occipital_Sup", "superior occipital gyrus"},
    {"Occipital_Mid", "middle occipital gyrus"},
    {"Occipital_Inf", "inferior occipital gyrus"},
    {"Fusiform", "fusiform gyrus"},
    {"Postcentral", "postcentral gyrus"},
    {"Parietal_Sup", "superior parietal gyrus"},
    {"Parietal_Inf", "inferior parietal gyrus"},
    {"SupraMarginal", "supramarginal gyrus"},
    {"Angular", "angular gyrus"},
    {"Precuneus", "precuneus"},
    {"Paracentral_Lobule", "paracentral lobule"},
    {"Caudate", "caudate nucleus"},
    {"Putamen", "putamen"},
    {"Pallidum", "pallidum"},
    {"Thalamus", "thalamus"},
    {"Heschl", "transverse temporal gyrus"},
    {"Temporal_Sup", "superior temporal gyrus"},
    {"Temporal_Pole_Sup", "temporal pole, superior part"},
    {"Temporal_Mid", "middle temporal gyrus"},
    {"Temporal_Pole_Mid", "temporal pole, middle part"},
    {"Temporal_Inf", "inferior temporal gyrus"},
}};

std::string in_words(std::string name) {
  std::string side;
  if (name.ends_with("_L") || name.ends_with("_R")) {
    side = name.back() == 'L' ? "left " : "right ";
    name.resize(name.size() - 2);
  }
  for (const auto& [known, words] : spelt_out)
    if (name == known) return side + std::string(words);
  if (name.starts_with("Cerebelum")) return side + "cerebellum";
  if (name.starts_with("Vermis")) return "vermis of the cerebellum";
  std::replace(name.begin(), name.end(), '_', ' ');
  return side + name;
}

}  // namespace

std::vector<std::string> gyrus_names(const std::string& text, const std::string& name) {
  std::vector<std::string> names(256);
  bool any = false;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    std::istringstream words(line);
    int number = 0;
    std::string region;
    if (!(words >> number >> region) || number < 1 || number > 255) continue;
    names[static_cast<std::size_t>(number)] = in_words(region);
    any = true;
  }
  if (!any)
    throw ModelError(Message::of("%1 names no regions; install the package it came with again.", name));
  return names;
}

}  // namespace scalpmark::models
