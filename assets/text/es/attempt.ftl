# Los intentos: para qué se empiezan, cuáles no se terminaron, y los momentos a los que se vuelve.

attempt-practise = Practicar: con ayuda, y se puede volver a un momento e intentar de nuevo
attempt-be-assessed = Ser evaluado: sin ayuda y sin volver atrás; queda escrito en el intento
attempt-assessment = Evaluación
attempt-was-practice = Esto fue práctica.
attempt-was-assessment = Esto fue una evaluación.
attempt-went-on-from = Un segundo intento: siguió desde { $attempt }, línea { $line }.
attempt-never-ended = Sin terminar
attempt-go-on = Seguir con: { $attempt }
attempt-offer = { $title }, { $who }, en { $time }
attempt-offer-assessed = { $title }, { $who }, en { $time }, evaluado
attempt-no-name = sin nombre
attempt-blocked = { $count ->
    [one] 1 con el que no se puede seguir
   *[other] { $count } con los que no se puede seguir
}
attempt-cannot-go-on = { $attempt }: no se puede seguir con él: { $why }
attempt-again = El trabajo se hace de nuevo hasta donde continúa
attempt-progress = { $now } de { $end }
attempt-stop = Detener esto
attempt-put-aside = Dejar el trabajo para después
attempt-put-aside-hint = Se puede seguir con él desde la lista de ejercicios.
attempt-moments = Momentos
attempt-nothing-done = Todavía no se hizo nada.
attempt-no-going-back = Esto es una evaluación: no se vuelve atrás.
attempt-choose-moment = Elija uno para volver a él e intentar de nuevo desde allí.
attempt-refused = { $action }, rechazado
attempt-before = Volver a antes de: { $moment }
attempt-before-means = El trabajo queda entonces como estaba justo antes. Lo que se hizo desde allí queda en su propio intento, que termina como abandonado; se empieza uno nuevo.
attempt-go-back = Volver e intentar de nuevo
attempt-stay = Quedarse aquí
