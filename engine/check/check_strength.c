#include "check.h"

#include "table/wire.h"
#include "model/string_load.h"

/* Stress in the wire that carries the string against what such wire holds: of all strings the nearest to
 * breaking. */
static void
check_wire (RwCheck *check)
{
  const RwStringSet *set = &check->used->strings_set;
  double most = 0.0;
  int worst = 1;

  for (int i = 1; i <= set->count; i++)
    if (check->at[RW_STRINGS_STRENGTH_SHARE + i] > most)
      {
        most = check->at[RW_STRINGS_STRENGTH_SHARE + i];
        worst = i;
      }
  const RwString *string = &set->at[worst - 1];
  double strength = rw_wire_strength (string->wire, rw_string_wire (string));
  rw_check_add (check, rw_check_high (most, 100.0, 100.0 * check->used->limits_wire_use, RW_NEVER),
                "strings.breaks", "strings.set scale.length strings.stress[{2}]",
                N_("String {2} is stressed to {1 MPa} at pitch, {4 %} of the {3 MPa} at which its wire breaks, "
                   "and it breaks sooner where it bends. A lower note or a shorter scale helps; a thicker plain "
                   "string does not."),
                check->at[RW_STRINGS_STRESS + worst], worst, strength, most);
}

/* A rim of ordinary section hardly yields, and is not to be tuned by.  Rod or stick keep the strings from
 * pulling it oval. */
static void
check_rim_load (RwCheck *check)
{
  const double *at = check->at;
  double in = at[RW_RIM_HEAD_SQUEEZE] + at[RW_RIM_HEAD_ROLL], oval = at[RW_RIM_STRING_OVAL];
  double times = round (at[RW_RIM_BUCKLING]);
  gboolean weak = in > RW_MOST_RIM_IN || at[RW_RIM_BUCKLING] < RW_LEAST_BUCKLING;

  rw_check_add (check, weak ? RW_CAUTION : RW_NOTE,
                "rim.loads", "rim.wall rim.height rim.head_squeeze rim.head_roll rim.buckling",
                weak ? N_("The head draws the rim's edge in by {1 mm}, and at {2} times its tension the rim would "
                          "buckle. Give it a thicker wall, or a stiffer wood.")
                     : N_("The head draws the rim's edge in by {1 mm}, and the rim would buckle at {2} times its "
                          "tension: no concern."),
                in, times);
  rw_check_add (check, oval > RW_MOST_RIM_OVAL ? RW_NOTE : RW_FINE,
                "rim.oval", "rim.wall rim.string_oval strings.tension_total",
                N_("The strings' pull of {2 N} would make the rim {1 mm} oval if nothing else took it. Set the "
                   "nuts of the rod, or the stick, snug between neck and tail before stringing up."),
                oval, at[RW_STRINGS_TENSION_TOTAL]);
}

void
rw_check_strength (RwCheck *check)
{
  check_wire (check);
  check_rim_load (check);
}
