#include <math.h>
#include <string.h>

#include "table/material.h"
#include "table/quantity.h"

static const RwThread *
thread_of (const char *id)
{
  for (int i = 0; i < rw_threads_count; i++)
    if (g_str_equal (rw_threads[i].id, id))
      return &rw_threads[i];
  g_error ("No thread %s", id);
}

static void
test_find (void)
{
  for (int i = 0; i < rw_woods_count; i++)
    g_assert_cmpint (rw_wood_find (rw_woods[i].id), ==, i);
  for (int i = 0; i < rw_metals_count; i++)
    g_assert_cmpint (rw_metal_find (rw_metals[i].id), ==, i);
  g_assert_cmpint (rw_wood_find ("cheese"), ==, -1);
  g_assert_cmpint (rw_metal_find (""), ==, -1);
}

/* Specific gravity at 12 % as Wood Handbook table 5-3 prints it; the metric density is 1.12 times that of
 * water times it.  Half of the last digit of a printed 0.01 is 5.6 kg/m3. */
static void
test_density_of_printed_gravity (void)
{
  static const struct
  {
    const char *id;
    double      gravity;
  } printed[] = {
    { "maple_hard", 0.63 }, { "maple_red", 0.54 }, { "maple_silver", 0.47 }, { "walnut_black", 0.55 },
    { "cherry_black", 0.50 }, { "ash_white", 0.60 }, { "oak_white", 0.68 }, { "oak_red", 0.63 },
    { "beech", 0.64 }, { "birch_yellow", 0.62 }, { "douglas_fir", 0.48 }, { "spruce_sitka", 0.40 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (printed); i++)
    {
      const RwWood *wood = &rw_woods[rw_wood_find (printed[i].id)];

      g_assert_cmpfloat_with_epsilon (wood->density_kg_m3, 1120 * printed[i].gravity, 1e-9);
    }
}

/* Basic specific gravity to air-dry density by weighing: a cubic metre when green holds 1000 Gb kg of dry
 * wood; at 12 % it has lost 60 % of its volume shrinkage, 26.5 Gb per cent in all (Wood Handbook, chapter 4,
 * from memory), and holds 12 % of water.  Purpleheart: Gb 0.67. */
static void
test_density_of_basic_gravity (void)
{
  const double  gb = 0.67;
  const double  volume = 1 - 0.60 * 0.265 * gb;
  const RwWood *wood = &rw_woods[rw_wood_find ("purpleheart")];

  g_assert_cmpfloat_with_epsilon (wood->density_kg_m3, 1000 * gb * 1.12 / volume, 1e-9);
}

/* Total shrinkage S, Wood Handbook table 4-3 and Chudnoff 1984, gives the printed coefficients by
 * C = (S/3000)/(1 - 20 S/3000) to half of the last printed digit.  The commercial oaks don't fit. */
static void
test_movement_of_shrinkage (void)
{
  static const struct
  {
    const char *id;
    double      radial, tangential;
  } printed[] = {
    { "maple_hard", 4.8, 9.9 }, { "maple_red", 4.0, 8.2 }, { "maple_silver", 3.0, 7.2 },
    { "walnut_black", 5.5, 7.8 }, { "cherry_black", 3.7, 7.1 }, { "ash_white", 4.9, 7.8 },
    { "beech", 5.5, 11.9 }, { "birch_yellow", 7.3, 9.5 }, { "douglas_fir", 4.8, 7.6 },
    { "spruce_sitka", 4.3, 7.5 }, { "pear", 3.9, 11.3 }, { "meranti_dark_red", 3.8, 7.9 },
    { "cedar_spanish", 4.2, 6.3 }, { "rosewood_indian", 2.7, 5.8 }, { "padauk_african", 3.3, 5.2 },
    { "purpleheart", 3.2, 6.1 }, { "goncalo_alves", 4.0, 7.6 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (printed); i++)
    {
      const RwWood *wood = &rw_woods[rw_wood_find (printed[i].id)];
      double        r = printed[i].radial / 3000, t = printed[i].tangential / 3000;

      g_test_message ("%s", wood->id);
      g_assert_cmpfloat_with_epsilon (wood->cr, r / (1 - 20 * r), 0.0000101);
      g_assert_cmpfloat_with_epsilon (wood->ct, t / (1 - 20 * t), 0.0000101);
    }
}

/* A board of hard wood is lighter than water but for ebony, stiffer than 5 GPa, and moves more along the
 * rings than across them. */
static void
test_woods_plausible (void)
{
  for (int i = 0; i < rw_woods_count; i++)
    {
      const RwWood *wood = &rw_woods[i];

      g_assert_cmpfloat (wood->density_kg_m3, >, 350);
      g_assert_cmpfloat (wood->density_kg_m3, <, 1150);
      g_assert_cmpfloat (wood->modulus_gpa, >, 5);
      g_assert_cmpfloat (wood->modulus_gpa, <, 25);
      g_assert_true ((wood->cr > 0) == (wood->ct > 0));
      g_assert_true (wood->ct == 0 || wood->ct > wood->cr);
      g_assert_nonnull (wood->note);
    }
}

/* Metric: 0.7854 (d - 0.9382 P)^2 (ISO 898-1).  Unified: 0.7854 (D - 0.9743 P)^2 (ASME B1.1).  Printed to
 * three digits, the unified ones to 0.0001 sq in or 0.00001, half of which is 0.033 mm2; number 6 to 1/4 by
 * the printed 0.00909, .0140, .0175, .0200 and .0318 sq in. */
static void
test_stress_areas (void)
{
  for (int i = 0; i < rw_threads_count; i++)
    {
      const RwThread *thread = &rw_threads[i];
      gboolean        metric = thread->id[0] == 'M';
      double          diameter = thread->major_mm - (metric ? 0.9382 : 0.9743) * thread->pitch_mm;
      double          area = 0.7854 * diameter * diameter;

      g_test_message ("%s", thread->id);
      g_assert_cmpfloat_with_epsilon (thread->stress_area_mm2, area, metric ? 0.025 : 0.04);
    }
}

/* The rule drill = d - P gives the metric list exactly, rounded to 0.05 mm; unified drills leave 69 to 78 % of
 * the basic thread (1.299 P), as the charts have it. */
static void
test_tap_drills (void)
{
  for (int i = 0; i < rw_threads_count; i++)
    {
      const RwThread *thread = &rw_threads[i];
      double          share = (thread->major_mm - thread->tap_drill_mm) / (1.299 * thread->pitch_mm);

      g_test_message ("%s", thread->id);
      if (thread->id[0] == 'M')
        g_assert_cmpfloat_with_epsilon (thread->tap_drill_mm, thread->major_mm - thread->pitch_mm, 1e-9);
      else
        g_assert_true (share > 0.685 && share < 0.78);
    }
}

/* Number n of the unified series is 0.060 + 0.013 n inches; the pitch is an inch over the second number. */
static void
test_unified_sizes (void)
{
  static const struct
  {
    const char *id;
    double      inches;
    int         per_inch;
  } sizes[] = {
    { "6-32", 0.138, 32 }, { "8-32", 0.164, 32 }, { "10-24", 0.190, 24 }, { "10-32", 0.190, 32 },
    { "1/4-20", 0.25, 20 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (sizes); i++)
    {
      const RwThread *thread = thread_of (sizes[i].id);

      g_assert_cmpfloat_with_epsilon (thread->major_mm, sizes[i].inches * RW_MM_PER_INCH, 0.0005);
      g_assert_cmpfloat_with_epsilon (thread->pitch_mm, RW_MM_PER_INCH / sizes[i].per_inch, 0.000005);
    }
}

/* C26000 brass is 16 million psi, 304 steel 28 million (mill and data sheets): to 2 %. */
static void
test_metals (void)
{
  const double gpa_per_million_psi = 6.894757;

  g_assert_cmpfloat_with_epsilon (rw_metals[rw_metal_find ("brass_cartridge_half_hard")].modulus_gpa,
                                  16 * gpa_per_million_psi, 2.2);
  g_assert_cmpfloat_with_epsilon (rw_metals[rw_metal_find ("stainless_304")].modulus_gpa,
                                  28 * gpa_per_million_psi, 3.9);
  for (int i = 0; i < rw_metals_count; i++)
    g_assert_true (rw_metals[i].yield_mpa < rw_metals[i].modulus_gpa * 1000 / 200);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/material/find", test_find);
  g_test_add_func ("/material/wood/density-of-printed-gravity", test_density_of_printed_gravity);
  g_test_add_func ("/material/wood/density-of-basic-gravity", test_density_of_basic_gravity);
  g_test_add_func ("/material/wood/movement-of-shrinkage", test_movement_of_shrinkage);
  g_test_add_func ("/material/wood/plausible", test_woods_plausible);
  g_test_add_func ("/material/thread/stress-areas", test_stress_areas);
  g_test_add_func ("/material/thread/tap-drills", test_tap_drills);
  g_test_add_func ("/material/thread/unified-sizes", test_unified_sizes);
  g_test_add_func ("/material/metal/moduli", test_metals);
  return g_test_run ();
}
