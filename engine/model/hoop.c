/* The tension hoop: bore over the head's collar, strip, and the former it is bent on. */
#include "model.h"

typedef struct
{
  double thickness, relaxed; /* mm; radius of the neutral line after springing back */
  double yield_per_modulus;
} Bend;

/* Springback of a bar bent to neutral radius ri: ri/rf = 4X^3 - 3X + 1, X = ri Y/(E t), 0 <= X < 0.5.
 * Source: elastic-perfectly plastic bar, F. J. Gardiner, Trans. ASME 79 (1957) 1; formula as in
 * S. Kalpakjian & S. Schmid, Manufacturing Engineering and Technology (from memory). */
static double
relaxed_excess (double ri, void *data)
{
  const Bend *bend = data;
  double x = ri * bend->yield_per_modulus / bend->thickness;

  return bend->relaxed * (4 * x * x * x - 3 * x + 1) - ri;
}

static double
predicted_springback (const RwModel *m, double bore)
{
  const RwDesign *d = m->d;
  const RwMetal *metal = &rw_metals[d->hoop_material];
  Bend bend = { d->hoop_thickness, (bore + d->hoop_thickness) / 2,
                m->guessed.yield * metal->yield_mpa / (metal->modulus_gpa * 1000) };
  double limit = 0.5 * bend.thickness / bend.yield_per_modulus;
  double former = 2 * rw_root (relaxed_excess, &bend, 0, limit) - d->hoop_thickness;

  return former > 0 ? 100 * (bore / former - 1) : NAN;
}

void
rw_model_hoop (RwModel *m)
{
  const RwDesign *d = m->d;
  double t = d->hoop_thickness;
  double bore = rw_settle (m, RW_HOOP_BORE, d->head_nominal + 2 * d->hoop_clearance);

  m->hoop_ro = rw_settle (m, RW_HOOP_OUTER_DIAMETER, bore + 2 * t) / 2;
  rw_settle (m, RW_HOOP_OVERLAP, (d->head_nominal + 2 * d->head_band - bore) / 2);
  rw_settle (m, RW_HOOP_STRIP, G_PI * (bore + t) - d->hoop_joint_gap);

  double springback = d->hoop_springback_test > 0 ? d->hoop_springback_test : predicted_springback (m, bore);
  springback = rw_settle (m, RW_HOOP_SPRINGBACK, springback);
  rw_settle (m, RW_HOOP_FORMER, bore / (1 + springback / 100));

  rw_settle (m, RW_HOOP_TOP_OVER_HEAD, d->hoop_height - d->head_collar - d->hoop_travel);
  rw_settle (m, RW_HOOP_MASS,
             G_PI * (bore + t) * t * d->hoop_height * rw_metals[d->hoop_material].density_kg_m3 * 1e-6);
}
