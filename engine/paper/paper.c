#include "paper.h"

const RwPaperKind rw_paper_kinds[] = {
  { "general", N_ ("General arrangement"), N_ ("seen from the head side, and from the side"), RW_PAPER_FITTED,
    rw_paper_general },
  { "steps", N_ ("Steps"), "", RW_PAPER_LIST, rw_paper_steps },
  { "shopping", N_ ("Shopping list"), "", RW_PAPER_LIST, rw_paper_shopping },
  { "cutting", N_ ("Cutting plan"), N_ ("marked ends to the left; larger across the grain than along it"),
    RW_PAPER_LIST, rw_paper_cutting },
  { "dimensions", N_ ("Dimensions"), "", RW_PAPER_LIST, rw_paper_dimensions },
  { "segment", N_ ("Segment card"), N_ ("seen from the head side"), RW_PAPER_FULL_SIZE, rw_paper_segment },
  { "ring", N_ ("Ring to glue on"), N_ ("seen from the head side"), RW_PAPER_FULL_SIZE, rw_paper_ring },
  { "rim-plan", N_ ("Rim plan"), N_ ("seen from the head side"), RW_PAPER_FULL_SIZE, rw_paper_rim_plan },
  { "rim-strip", N_ ("Rim strip"), N_ ("seen from outside, head side up"), RW_PAPER_FULL_SIZE,
    rw_paper_rim_strip },
  { "pot", N_ ("Pot section"), N_ ("cut through a shoe"), RW_PAPER_FULL_SIZE, rw_paper_pot },
  { "hooks-hoop", N_ ("Hooks and hoop"), N_ ("hook and rod from the side, hoop cut through"),
    RW_PAPER_FULL_SIZE, rw_paper_hooks_hoop },
  { "neck-plan", N_ ("Neck plan"), N_ ("seen from the playing side"), RW_PAPER_FULL_SIZE,
    rw_paper_neck_plan },
  { "neck-side", N_ ("Neck from the side"), N_ ("seen from the side"), RW_PAPER_FULL_SIZE,
    rw_paper_neck_side },
  { "sections", N_ ("Neck gauges"), N_ ("seen from the body"), RW_PAPER_FULL_SIZE, rw_paper_sections },
  { "heel", N_ ("Heel card"), N_ ("seen from the head side, from the side and from the pot"),
    RW_PAPER_FULL_SIZE, rw_paper_heel },
  { "headstock", N_ ("Headstock"), N_ ("seen on the face"), RW_PAPER_FULL_SIZE, rw_paper_headstock },
  { "fretboard", N_ ("Fretboard"), N_ ("seen from the playing side"), RW_PAPER_FULL_SIZE,
    rw_paper_fretboard },
  { "scale-stick", N_ ("Scale stick"), N_ ("from the nut line"), RW_PAPER_FULL_SIZE, rw_paper_scale_stick },
  { "bridge-nut", N_ ("Nut and bridge slots"), N_ ("seen from the tail"), RW_PAPER_FULL_SIZE,
    rw_paper_bridge_nut },
};

const int rw_paper_kinds_count = G_N_ELEMENTS (rw_paper_kinds);

int
rw_paper_kind_find (const char *id)
{
  for (int i = 0; i < rw_paper_kinds_count; i++)
    if (g_str_equal (rw_paper_kinds[i].id, id))
      return i;
  return -1;
}
