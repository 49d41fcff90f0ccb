#include "check.h"

/* Strings that have a post on the headstock come first: all full-length ones, and a short one by the
 * tunnel. */
static int
post_count (const RwCheck *check)
{
  const RwPlan *plan = &check->result->plan;

  return isfinite (check->at[RW_HEADSTOCK_POST_X + plan->strings]) ? plan->strings : plan->full;
}

static void
check_posts_apart (RwCheck *check)
{
  const double *x = &check->at[RW_HEADSTOCK_POST_X], *y = &check->at[RW_HEADSTOCK_POST_Y];
  double button = check->used->headstock_button, least = G_MAXDOUBLE;
  int one = 1, other = 2;

  for (int i = 1; i <= post_count (check); i++)
    for (int j = i + 1; j <= post_count (check); j++)
      if (hypot (x[i] - x[j], y[i] - y[j]) < least)
        {
          least = hypot (x[i] - x[j], y[i] - y[j]);
          one = i;
          other = j;
        }
  rw_check_add (check, rw_check_low (least, button, button + check->used->limits_tuner_room, RW_NEVER),
                "headstock.posts_collide",
                "headstock.post_pitch headstock.post_across_last headstock.button headstock.post_y[{4}]",
                N_("The posts of strings {3} and {4} stand {1 mm} apart and the tuners' housings are {2 mm} "
                   "across; {5 mm} between housings is the least. Set the posts farther apart."),
                least, button, one, other, check->used->limits_tuner_room);
}

static void
check_post_edges (RwCheck *check)
{
  const RwDesign *used = check->used;
  double tuner = used->headstock_button / 2.0 + used->limits_tuner_room;
  double least = G_MAXDOUBLE, want = fmax (used->limits_post_edge, tuner);
  int worst = 1;

  for (int i = 1; i <= post_count (check); i++)
    {
      double side = used->headstock_width / 2.0 - fabs (check->at[RW_HEADSTOCK_POST_Y + i]);
      double edge = fmin (side, used->headstock_length - check->at[RW_HEADSTOCK_POST_X + i]);

      if (edge < least)
        {
          least = edge;
          worst = i;
        }
    }
  rw_check_add (check, rw_check_low (least, used->headstock_post_hole / 2.0, want, RW_NEVER),
                "headstock.post_at_edge", "headstock.width headstock.length headstock.post_y[{2}]",
                N_("The post of string {2} stands {1 mm} from the headstock's edge; {3 mm} is wanted for "
                   "the wood and for the tuner's housing. Make the headstock wider or longer, or bring the "
                   "posts in."),
                least, worst, want);
}

static void
check_bends (RwCheck *check)
{
  double most = 0.0;
  int worst = 1;

  for (int i = 1; i <= check->result->plan.full; i++)
    if (check->at[RW_HEADSTOCK_BEND + i] > most)
      {
        most = check->at[RW_HEADSTOCK_BEND + i];
        worst = i;
      }
  rw_check_add (check, rw_check_high (most, RW_NEVER, check->used->limits_post_bend, RW_NEVER),
                "headstock.bend", "headstock.post_first headstock.post_across_first headstock.bend[{2}]",
                N_("String {2} bends sideways by {1 deg} behind the nut; over {3 deg} it binds in its slot "
                   "and breaks early. Set the posts farther from the nut, or nearer together across."),
                most, worst, check->used->limits_post_bend);
}

static void
check_shape (RwCheck *check)
{
  const RwDesign *used = check->used;
  double wide = used->headstock_width, blank = used->limits_blank_width;

  rw_check_add (check,
                used->headstock_ears == RW_YES ? RW_FINE : rw_check_high (wide, RW_NEVER, RW_NEVER, blank),
                "headstock.ears", "headstock.width headstock.ears neck.blank_width",
                N_("A headstock {1 mm} wide is more than the {2 mm} that neck blanks are commonly cut from. "
                   "Glue ears of {3 mm} on each side, with the allowance for cleaning up."),
                wide, blank, (wide - blank + used->neck_blank_allowance) / 2.0);
  rw_check_add (check, rw_check_low (used->headstock_angle, RW_NEVER, used->limits_head_angle, RW_NEVER),
                "headstock.angle", "headstock.angle",
                N_("The headstock leans back by {1 deg}; under {2 deg} the strings press too little on the "
                   "nut, and buzz or jump out. 12 to 14 degrees is common."),
                used->headstock_angle, used->limits_head_angle);
}

/* The neck of a tuner reaches through a certain thickness, and its nut holds on what stands out. */
static void
check_thickness (RwCheck *check)
{
  const RwDesign *used = check->used;
  double thick = used->headstock_thickness;
  double thin = used->limits_headstock_thin, most = used->limits_headstock_thick;

  rw_check_add (check, rw_check_low (thick, RW_NEVER, thin, RW_NEVER),
                "headstock.thin", "headstock.thickness",
                N_("The headstock is {1 mm} thick; the tuners are given as holding in {2 mm} to {3 mm}. Take "
                   "them in hand and measure before thinning it."),
                thick, thin, most);
  rw_check_add (check, rw_check_high (thick, RW_NEVER, most, RW_NEVER),
                "headstock.thick", "headstock.thickness",
                N_("The headstock is {1 mm} thick; the tuners are given as holding in {2 mm} to {3 mm}, and "
                   "their nuts would find no thread. Plane it, or take longer tuners."),
                thick, thin, most);
}

void
rw_check_headstock (RwCheck *check)
{
  check_posts_apart (check);
  check_post_edges (check);
  check_bends (check);
  check_shape (check);
  check_thickness (check);
}
