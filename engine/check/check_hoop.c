#include "check.h"
#include <string.h>

#include "table/material.h"

/* Two-phase brass that cracks when it is bent cold; cartridge brass is the one for bending: Copper
 * Development Association data sheets. */
#define RW_CRACKING_METAL "brass_cutting_half_hard"

static void
check_place (RwCheck *check)
{
  const RwDesign *used = check->used;
  double overlap = check->at[RW_HOOP_OVERLAP], top = check->at[RW_HOOP_TOP_OVER_HEAD];
  double metal = used->hoop_height - used->hoop_notch_depth;

  rw_check_add (check, rw_check_low (overlap, 0.0, used->limits_hoop_overlap, RW_NEVER),
                "hoop.on_band", "hoop.clearance head.band hoop.overlap",
                overlap < 0.0 ? N_("The hoop is {1 mm} wider than the head's band and slips over it. Less "
                                   "clearance or a wider band or flesh hoop helps.")
                              : N_("The hoop stands over the head's band by {1 mm}; under {2 mm} it can "
                                   "slip past the band or tip it. Less clearance or a wider band or flesh "
                                   "hoop helps."),
                fabs (overlap), used->limits_hoop_overlap);
  rw_check_add (check, rw_check_low (top, 0.0, used->limits_hoop_top, RW_NEVER),
                "hoop.bottomed", "hoop.height head.collar hoop.travel hoop.top_over_head",
                top < 0.0 ? N_("Tightened, the hoop's top is {1 mm} under the head: it has no more to give. "
                               "A higher hoop, a lower collar or less travel helps.")
                          : N_("Tightened, the hoop's top stands {1 mm} over the head; about 3 mm is "
                               "wanted, and at 0 it has no more to give. A higher hoop, a lower collar or "
                               "less travel helps."),
                fabs (top));
  rw_check_add (check, rw_check_high (check->at[RW_HOOP_STRIP], RW_NEVER, RW_NEVER, used->limits_bar_length),
                "hoop.bar_short", "head.nominal hoop.strip",
                N_("The hoop takes {1 mm} of bar, and 25 to 50 mm more for the ends that stay straight; bar "
                   "is often sold in pieces of {2 mm}. Buy a longer piece."),
                check->at[RW_HOOP_STRIP], used->limits_bar_length);
  rw_check_add (check, rw_check_low (metal, 0.0, used->limits_notch_metal, RW_NEVER),
                "hoop.notch_deep", "hoop.notch_depth hoop.height",
                N_("A seat {1 mm} deep leaves {2 mm} of the hoop's height to carry the pull between hooks; "
                   "common practice keeps {3 mm}."),
                used->hoop_notch_depth, metal, used->limits_notch_metal);
}

static void
check_bending (RwCheck *check)
{
  const RwDesign *used = check->used;
  double spring = check->at[RW_HOOP_SPRINGBACK];

  if (used->hoop_springback_test <= 0.0)
    rw_check_add (check, spring > used->limits_springback ? RW_CAUTION : RW_NOTE,
                  "hoop.untested", "hoop.springback_test hoop.material hoop.springback hoop.former",
                  spring > used->limits_springback
                    ? N_("The bar is expected to spring open by {1 %} after bending, from a former of "
                         "{2 mm}: so much can't be told beforehand. Take annealed metal or a thicker bar, "
                         "or bend a test piece and enter what it did.")
                    : N_("The bar is expected to spring open by {1 %} after bending, so the former is "
                         "{2 mm} across. That is an estimate from the metal's usual yield: bend a test "
                         "piece and enter what it did."),
                  spring, check->at[RW_HOOP_FORMER]);
  if (strcmp (rw_metals[used->hoop_material].id, RW_CRACKING_METAL) == 0)
    rw_check_add (check, RW_CAUTION,
                  "hoop.cracks", "hoop.material",
                  N_("Free-cutting brass has little capacity for cold bending (Copper Development "
                     "Association) and may crack at {1 mm}. Anneal it well before bending, or take "
                     "cartridge brass."),
                  used->hoop_thickness);
}

/* The shoes stand under the hoop; it comes down to them before the head is tight. */
static void
check_way_down (RwCheck *check)
{
  const RwDesign *used = check->used;
  double way = used->shoes_below_edge - used->shoes_height / 2.0 - used->head_collar - used->hoop_travel;

  rw_check_add (check, rw_check_low (way, 0.0, used->hooks_reserve, RW_NEVER),
                "hoop.on_shoes", "shoes.below_edge shoes.height head.collar hooks.reserve",
                way < 0.0 ? N_("The hoop meets the shoes {1 mm} before it is down. Set the shoes lower or "
                               "take lower ones.")
                          : N_("Tightened, the hoop's lower face is {1 mm} above the shoes, and {2 mm} of "
                               "further travel are to be allowed. Set the shoes lower or take lower ones."),
                fabs (way), used->hooks_reserve);
}

void
rw_check_hoop (RwCheck *check)
{
  check_place (check);
  check_bending (check);
  check_way_down (check);
}
