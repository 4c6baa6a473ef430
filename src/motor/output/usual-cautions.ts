/** What every report ends with. */
export const usualCautions: readonly string[] = [
  'An analysis is no permission. It is as good as the values that went in, and it knows nothing of the part in your hand.',
  'Test remotely and behind a barrier, with everyone at the distance that the safety code asks for; treat a motor that did not light as one that may.',
  'Follow the law of the place and the codes of the national associations.',
  'Have the hardware and this review looked at by someone licensed or certified before anything is fired.',
];
