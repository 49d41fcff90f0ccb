#include "check.h"

/* Film heads sold for banjos of all kinds, mm; those between are made to order or from skin. */
static const double rw_head_sizes[] = { 152.4, 177.8, 203.2, 228.6, 254.0, 279.4, 304.8, 330.2 };

static void
check_fit (RwCheck *check)
{
  const RwDesign *used = check->used;
  double room = used->head_nominal - used->rim_outer_diameter;
  int severity = rw_check_low (room, 0.0, used->limits_head_room, RW_NEVER);

  rw_check_add (check, severity,
                "head.tight", "rim.outer_diameter head.nominal",
                room < 0.0 ? N_("The rim is {1 mm} larger than the head is across inside its band: the head "
                                "does not go on. Heads want {2 mm} to {3 mm} to spare: measure the band "
                                "three ways and turn the rim to it.")
                           : N_("Over the rim the head has {1 mm} to spare inside its band; {2 mm} to "
                                "{3 mm} is right, or it goes on hard and tears. Measure the band three ways "
                                "and turn the rim to it."),
                fabs (room), used->limits_head_room, used->limits_head_room_good);
  severity = rw_check_high (room, RW_NEVER, used->limits_head_room_most, used->limits_head_room_good);
  rw_check_add (check, severity,
                "head.loose", "rim.outer_diameter head.nominal",
                N_("The head is {1 mm} larger than the rim across; {2 mm} to {3 mm} is right. A loose head "
                   "is pulled down too far before it is tight, and creeps to one side."),
                room, used->limits_head_room, used->limits_head_room_good);
}

static void
check_size (RwCheck *check)
{
  const RwDesign *used = check->used;
  double nominal = used->head_nominal, nearest = rw_head_sizes[0];

  for (gsize i = 1; i < G_N_ELEMENTS (rw_head_sizes); i++)
    if (fabs (rw_head_sizes[i] - nominal) < fabs (nearest - nominal))
      nearest = rw_head_sizes[i];
  if (used->head_material == RW_HEAD_FILM)
    rw_check_add (check, rw_check_high (fabs (nearest - nominal), RW_NEVER, RW_NEVER, used->limits_head_size),
                  "head.odd_size", "head.nominal",
                  N_("No usual film head is {1 mm}; the nearest is {2 mm}. Other sizes are special orders "
                     "with a long wait: have the head in hand before turning the rim, or lap a skin."),
                  nominal, nearest);
}

static void
check_tension (RwCheck *check)
{
  const RwDesign *used = check->used;
  double tension = check->at[RW_HEAD_TENSION];
  double stress = tension / used->head_thickness / 1000.0; /* N/m over mm: kPa to MPa */
  const char *key = used->head_tension_from == RW_TENSION_FROM_TAP ? "head.tap_frequency head.tension"
                                                                   : "head.tension";

  if (used->head_material != RW_HEAD_FILM)
    return;
  if (tension < used->limits_tension_low || tension > used->limits_tension_high)
    rw_check_add (check, RW_NOTE,
                  "head.tension_unusual", key,
                  N_("A head tension of {1 N/m} is outside {2 N/m} to {3 N/m}, where the sag and the tap "
                     "notes that makers report for film heads meet. No tension of a banjo head has been "
                     "published."),
                  tension, used->limits_tension_low, used->limits_tension_high);
  rw_check_add (check, rw_check_high (stress, RW_NEVER, RW_FILM_STRESS_MPA, RW_NEVER),
                "head.film_stress", key,
                N_("The film is stressed to {1 MPa}; at {2 MPa} polyester has stretched by a twentieth "
                   "(film maker's figure). Slacken the head or take a thicker one."),
                stress, RW_FILM_STRESS_MPA);
}

static void
check_tap (RwCheck *check)
{
  const double *at = check->at;

  rw_check_add (check, RW_NOTE,
                "head.tap_band", "head.tap_mode head.tap_frequency head.tension_low head.tension_high",
                N_("A tap of {1 Hz} tells the head's tension only between {2 N/m} and {3 N/m}, as one mode "
                   "or another was heard, and the sag between {4 mm} and {5 mm}. Plan for the whole band."),
                at[RW_HEAD_TAP_FREQUENCY], at[RW_HEAD_TENSION_LOW], at[RW_HEAD_TENSION_HIGH],
                at[RW_BRIDGE_SAG_LOW], at[RW_BRIDGE_SAG_HIGH]);
}

/* A skin comes down outside the rim and back up outside the flesh hoop: two layers each side inside the
 * hoop. */
static void
check_skin (RwCheck *check)
{
  const RwDesign *used = check->used;
  double room = check->at[RW_HOOP_BORE] - used->rim_outer_diameter - 4.0 * used->head_thickness;

  if (used->head_material == RW_HEAD_SKIN)
    rw_check_add (check, rw_check_low (room, 0.0, used->limits_skin_room, RW_NEVER),
                  "head.skin_room", "hoop.clearance head.thickness hoop.bore",
                  N_("Over two layers of skin on each side the hoop has {1 mm} to spare across; with less "
                     "than {2 mm} it will not go down over a wet skin. Give the hoop more clearance."),
                  room, used->limits_skin_room);
}

void
rw_check_head (RwCheck *check)
{
  check_fit (check);
  check_size (check);
  check_tension (check);
  check_tap (check);
  check_skin (check);
}
