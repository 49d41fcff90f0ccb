#include "material.h"

#include <glib.h>
#include <string.h>

/* Sources of the woods.
 *
 *   WH   Forest Products Laboratory, Wood Handbook, General Technical Report FPL-GTR-190, USDA Forest
 *        Service, 2010: change per size and per cent of moisture table 13-5, total shrinkage S table 4-3,
 *        specific gravity at 12 % and modulus table 5-3, imported woods table 5-5.
 *   FS   M. Chudnoff, Tropical Timbers of the World, USDA Agriculture Handbook 607, 1984.
 *   (m)  from memory.
 *
 * Air-dry density is 1120 kg/m3 times the specific gravity at 12 %: the oven-dry mass in the volume at 12 %,
 * with 12 % of water on top.  Imported woods have the basic specific gravity Gb instead, oven-dry mass in
 * the green volume; then G12 = Gb / (1 - 0.159 Gb) (WH chapter 4, from memory).  Where no coefficient is
 * printed it is C = (S / 3000) / (1 - 20 S / 3000), which gives back the printed ones of single species.
 */
#define FROM_G12(g12) (1120 * (g12))
#define FROM_BASIC(gb) (1120 * (gb) / (1 - 0.159 * (gb)))
#define MIDDLE(a, b) (((a) + (b)) / 2)

const RwWood rw_woods[] = {
  /* WH throughout. */
  { "maple_hard", N_("Sugar maple"), FROM_G12 (0.63), 12.6, 0.00165, 0.00353, "" },
  { "maple_red", N_("Red maple"), FROM_G12 (0.54), 11.3, 0.00137, 0.00289, "" },
  { "maple_silver", N_("Silver maple"), FROM_G12 (0.47), 7.9, 0.00102, 0.00252, "" },
  { "walnut_black", N_("Black walnut"), FROM_G12 (0.55), 11.6, 0.00190, 0.00274, "" },
  { "cherry_black", N_("Black cherry"), FROM_G12 (0.50), 10.3, 0.00126, 0.00248, "" },
  { "ash_white", N_("White ash"), FROM_G12 (0.60), 12.0, 0.00169, 0.00274, "" },
  { "oak_white", N_("White oak"), FROM_G12 (0.68), 12.3, 0.00180, 0.00365,
    N_("Movement is that of the commercial group of oaks") },
  { "oak_red", N_("Northern red oak"), FROM_G12 (0.63), 12.5, 0.00158, 0.00369,
    N_("Movement is that of the commercial group of oaks") },
  { "beech", N_("American beech"), FROM_G12 (0.64), 11.9, 0.00190, 0.00431, "" },
  { "birch_yellow", N_("Yellow birch"), FROM_G12 (0.62), 13.9, 0.00256, 0.00338, "" },

  /* WH, cr (m). */
  { "douglas_fir", N_("Douglas-fir"), FROM_G12 (0.48), 13.4, 0.00165, 0.00267, "" },
  /* WH, all (m). */
  { "spruce_sitka", N_("Sitka spruce"), FROM_G12 (0.40), 10.8, 0.00148, 0.00263, "" },

  /* Not in WH.  Air-dry density, modulus and S 3.9 and 11.3 from a species database. */
  { "pear", N_("European pear"), 690, 7.8, 0.00133, 0.00407, N_("Movement worked out from shrinkage") },

  /* WH 1999 table 4-5.  S 3.0 and 4.1 (FS) give .00102 and .00141, printed are .00172 and .00238 (m). */
  { "mahogany_honduras", N_("Honduras mahogany"), FROM_BASIC (0.45), 10.3, MIDDLE (0.00102, 0.00172),
    MIDDLE (0.00141, 0.00238), N_("Published movement differs: the middle of two sources") },
  /* The same.  S 2.5 and 4.5 (m) give .00085 and .00155, printed are .00141 and .00201 (m). */
  { "mahogany_african", N_("African mahogany (khaya)"), FROM_BASIC (0.42), 9.7, MIDDLE (0.00085, 0.00141),
    MIDDLE (0.00155, 0.00201), N_("Published movement differs: the middle of two sources") },
  /* FS: Gb 0.55, S 3.8 and 7.9; WH: Gb 0.46. */
  { "meranti_dark_red", N_("Dark red meranti"), FROM_BASIC (MIDDLE (0.46, 0.55)), 11.7, 0.0013, 0.00278,
    N_("Published density differs: the middle of two sources") },
  /* WH; cr and ct (m). */
  { "meranti_light_red", N_("Light red meranti"), FROM_BASIC (0.34), 8.5, 0.00126, 0.00241, "" },
  /* WH; S 4.2 and 6.3 (FS). */
  { "cedar_spanish", N_("Spanish-cedar"), FROM_BASIC (0.41), 9.9, 0.00144, 0.00219,
    N_("Movement worked out from shrinkage") },
  /* FS: S 2.7 and 5.8. */
  { "rosewood_indian", N_("Indian rosewood"), FROM_BASIC (0.70), 12.3, 0.00092, 0.00201,
    N_("Movement worked out from shrinkage") },
  /* FS: Gb 0.55 to 0.67, S 3.3 and 5.2. */
  { "padauk_african", N_("African padauk"), FROM_BASIC (MIDDLE (0.55, 0.67)), 12.1, 0.00112, 0.0018,
    N_("Published density is a range: its middle") },
  /* FS: S 3.2 and 6.1 (m); .00212 also printed. */
  { "purpleheart", N_("Purpleheart"), FROM_BASIC (0.67), 15.7, 0.00109, 0.00212, "" },
  /* FS: shrinkage only from green to 12 %, from which no coefficient follows. */
  { "ebony_african", N_("African ebony"), FROM_BASIC (0.82), 17.7, 0, 0, N_("Movement is not known") },
  /* FS: Gb 0.75 to 0.84, S 4.0 and 7.6 (m). */
  { "goncalo_alves", N_("Goncalo alves"), FROM_BASIC (MIDDLE (0.75, 0.84)), 15.4, 0.00137, 0.00267,
    N_("Published density is a range: its middle") },
  /* FS: Gb 0.65 to 0.78, S 4.0 to 7.6 and 6.6 to 10.2, modulus 15.2, 17.1 and 23.9: the lowest. */
  { "bubinga", N_("Bubinga"), FROM_BASIC (MIDDLE (0.65, 0.78)), 15.2, MIDDLE (0.00137, 0.00267),
    MIDDLE (0.00230, 0.00365),
    N_("Published density and movement are ranges: their middle; the lowest of three stiffnesses") },
};
const int rw_woods_count = G_N_ELEMENTS (rw_woods);

/* Brass C26000: mill sheet to ASTM B36; C36000: Copper Development Association data to ASTM B16.
 * Others: R. C. Hibbeler, Mechanics of Materials, table of properties. */
const RwMetal rw_metals[] = {
  { "brass_cartridge_annealed", N_("Cartridge brass, annealed"), 112, 145, 8530 },
  { "brass_cartridge_half_hard", N_("Cartridge brass, half hard"), 112, 350, 8530 },
  { "brass_cutting_half_hard", N_("Free-cutting brass, half hard"), 97, 310, 8490 },
  { "stainless_304", N_("Stainless steel 304, annealed"), 193, 207, 7860 },
  { "steel_mild", N_("Mild steel"), 200, 250, 7850 },
  { "aluminium_6061_t6", N_("Aluminium 6061-T6"), 68.9, 255, 2710 },
};
const int rw_metals_count = G_N_ELEMENTS (rw_metals);

/* Metric: ISO 724 geometry, stress areas as ISO 898-1 prints them, tap drills as ISO 2306.
 * Unified: ASME B1.1, drills number 36, 29, 25, 21 and 7. */
const RwThread rw_threads[] = {
  { "M2.5", 2.5, 0.45, 3.39, 2.05 },
  { "M3", 3, 0.5, 5.03, 2.5 },
  { "M3.5", 3.5, 0.6, 6.78, 2.9 },
  { "M4", 4, 0.7, 8.78, 3.3 },
  { "M5", 5, 0.8, 14.2, 4.2 },
  { "M6", 6, 1.0, 20.1, 5.0 },
  { "6-32", 3.505, 0.79375, 5.86, 2.705 },
  { "8-32", 4.166, 0.79375, 9.04, 3.454 },
  { "10-24", 4.826, 1.05833, 11.31, 3.797 },
  { "10-32", 4.826, 0.79375, 12.9, 4.039 },
  { "1/4-20", 6.35, 1.27, 20.53, 5.105 },
};
const int rw_threads_count = G_N_ELEMENTS (rw_threads);

int
rw_wood_find (const char *id)
{
  for (int i = 0; i < rw_woods_count; i++)
    if (strcmp (rw_woods[i].id, id) == 0)
      return i;
  return -1;
}

int
rw_metal_find (const char *id)
{
  for (int i = 0; i < rw_metals_count; i++)
    if (strcmp (rw_metals[i].id, id) == 0)
      return i;
  return -1;
}
