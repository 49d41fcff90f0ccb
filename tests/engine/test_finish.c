/* Shellac by the pound cut: pounds of flake to one US gallon of spirit. */
#include "expected.h"

/* 453.59237 g over 3.785411784 l, the exact definitions: 119.826 g to the litre for each pound. */
#define LITRE "shop.shellac_volume=1000|shop.shellac_cut="

static const Expected flakes[] = {
  { "half", LITRE "0.5", "finish.flake", 59.9, 0.06 },
  { "one", LITRE "1", "finish.flake", 119.8, 0.06 },
  { "one-and-half", LITRE "1.5", "finish.flake", 179.7, 0.06 },
  { "two", LITRE "2", "finish.flake", 239.7, 0.06 },
  { "three", LITRE "3", "finish.flake", 359.5, 0.06 },
  { "four", LITRE "4", "finish.flake", 479.3, 0.06 },
  /* The finisher's rules: 1 oz to the cup for each pound, and a three-pound cut is 6 oz to the pint. */
  { "ounce-to-cup", "shop.shellac_volume=236.588|shop.shellac_cut=1", "finish.flake", 28.3495, 0.0003 },
  { "six-to-pint", "shop.shellac_volume=473.176|shop.shellac_cut=3", "finish.flake", 6 * 28.3495, 0.002 },
};

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  expected_add ("/shellac", flakes, G_N_ELEMENTS (flakes));
  return g_test_run ();
}
