#include "paint_cairo.h"

/* Inks and tints.
 *
 * The materials are told apart by lightness before colour, so that they hold in grey print and for every
 * kind of colour vision.  Lightness (CIE 1976 L*), light / dark:
 *
 *   bone 93 / 41, head 90 / 36, light wood 84 / 30, metal 74 / 25, dark wood 59 / 19; paper 98 / 12
 *
 * in the same order in both, as the materials themselves stand in daylight.  Chroma stays under 25 (C*ab), so
 * that the lines speak first.  Hue says the rest: woods yellowish, metal bluish, bone warm, head grey.  No two of
 * them, the paper included, come nearer than 6 (CIE 1976 delta E*ab, where 2.3 is just noticeable), to trichromats
 * and to the three kinds of dichromats (tests/io/test_palette.c).
 *
 * Contrast (WCAG 2.1, relative luminance), where 4.5 is asked of lettering and 3 of lines that must be seen:
 *
 *              paper  bone  head  light wood  metal  dark wood
 *   light ink   15.4  13.5  12.3        10.4    7.9        4.9
 *   light pale   7.2   6.3   5.8         4.8    3.7        2.3
 *   dark ink    13.3   5.1   6.2         7.6    9.2       11.1
 *   dark pale    7.6   2.9   3.5         4.3    5.3        6.3
 *
 * Lettering is in ink and holds 4.5 everywhere.  Pale is for lines only: its lowest figures are grain and
 * facet lines on wood, which are meant to stay behind the outlines.  The accent holds 4.5 on paper.
 *
 * Where the desktop asks for high contrast nothing stays behind: every line is in ink and wider by half or more, ink is
 * black or white, and ink holds 7 on all tints.  They keep their order: 94 89 82 74 66 on 100, 37 31 25 18 12 on 0.
 */

const RwPalette rw_palette_light = {
  .paper = { 0.984, 0.980, 0.969 },
  .ink = { 0.114, 0.133, 0.153 },
  .pale = { 0.306, 0.337, 0.361 },
  .accent = { 0.769, 0.243, 0.122 },
  .tint = {
    [RW_TINT_PAPER] = { 0.984, 0.980, 0.969 },
    [RW_TINT_LIGHT_WOOD] = { 0.890, 0.804, 0.678 },
    [RW_TINT_DARK_WOOD] = { 0.671, 0.529, 0.404 },
    [RW_TINT_METAL] = { 0.686, 0.718, 0.757 },
    [RW_TINT_HEAD] = { 0.882, 0.886, 0.882 },
    [RW_TINT_BONE] = { 0.957, 0.922, 0.843 },
  },
  .weight = 1,
};

const RwPalette rw_palette_dark = {
  .paper = { 0.114, 0.125, 0.137 },
  .ink = { 0.914, 0.910, 0.894 },
  .pale = { 0.667, 0.698, 0.718 },
  .accent = { 0.992, 0.588, 0.388 },
  .tint = {
    [RW_TINT_PAPER] = { 0.114, 0.125, 0.137 },
    [RW_TINT_LIGHT_WOOD] = { 0.318, 0.271, 0.200 },
    [RW_TINT_DARK_WOOD] = { 0.227, 0.169, 0.125 },
    [RW_TINT_METAL] = { 0.204, 0.231, 0.263 },
    [RW_TINT_HEAD] = { 0.329, 0.329, 0.314 },
    [RW_TINT_BONE] = { 0.392, 0.380, 0.333 },
  },
  .weight = 1,
};

/* Paper brings its own white. */
const RwPalette rw_palette_print = {
  .paper = { 1.000, 1.000, 1.000 },
  .ink = { 0.114, 0.133, 0.153 },
  .pale = { 0.306, 0.337, 0.361 },
  .accent = { 0.769, 0.243, 0.122 },
  .tint = {
    [RW_TINT_PAPER] = { 1.000, 1.000, 1.000 },
    [RW_TINT_LIGHT_WOOD] = { 0.890, 0.804, 0.678 },
    [RW_TINT_DARK_WOOD] = { 0.671, 0.529, 0.404 },
    [RW_TINT_METAL] = { 0.686, 0.718, 0.757 },
    [RW_TINT_HEAD] = { 0.882, 0.886, 0.882 },
    [RW_TINT_BONE] = { 0.957, 0.922, 0.843 },
  },
  .weight = 1,
};

const RwPalette rw_palette_contrast = {
  .paper = { 1.000, 1.000, 1.000 },
  .ink = { 0.000, 0.000, 0.000 },
  .pale = { 0.000, 0.000, 0.000 },
  .accent = { 0.620, 0.130, 0.000 },
  .tint = {
    [RW_TINT_PAPER] = { 1.000, 1.000, 1.000 },
    [RW_TINT_LIGHT_WOOD] = { 0.874, 0.788, 0.669 },
    [RW_TINT_DARK_WOOD] = { 0.728, 0.608, 0.490 },
    [RW_TINT_METAL] = { 0.680, 0.718, 0.763 },
    [RW_TINT_HEAD] = { 0.880, 0.876, 0.869 },
    [RW_TINT_BONE] = { 0.970, 0.927, 0.865 },
  },
  .weight = 1.5,
};

const RwPalette rw_palette_contrast_dark = {
  .paper = { 0.000, 0.000, 0.000 },
  .ink = { 1.000, 1.000, 1.000 },
  .pale = { 1.000, 1.000, 1.000 },
  .accent = { 1.000, 0.720, 0.450 },
  .tint = {
    [RW_TINT_PAPER] = { 0.000, 0.000, 0.000 },
    [RW_TINT_LIGHT_WOOD] = { 0.270, 0.226, 0.162 },
    [RW_TINT_DARK_WOOD] = { 0.153, 0.117, 0.086 },
    [RW_TINT_METAL] = { 0.147, 0.180, 0.216 },
    [RW_TINT_HEAD] = { 0.286, 0.286, 0.286 },
    [RW_TINT_BONE] = { 0.370, 0.337, 0.285 },
  },
  .weight = 1.5,
};
